using System.Globalization;
using System.Text.Json;
using Gaugerod.Engine.Bonds;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Plans;

/// <summary>Writes the bond of a run in the job file's own words.</summary>
internal static class BondWriter
{
    public static void Write(Utf8JsonWriter json, BondRequest bond)
    {
        json.WriteStartObject("bond");
        json.WriteString("kind", Kind(bond).Name);
        switch (bond)
        {
            case BondRequest.Grid:
                json.WriteString("lay", Words.Lays.Say(bond.Lay));
                break;
            case BondRequest.Running running:
                json.WriteString("lay", Words.Lays.Say(bond.Lay));
                json.WriteString("offset", string.Create(CultureInfo.InvariantCulture, $"{running.Numerator}/{running.Denominator}"));
                json.WriteString("step", Words.Steps.Say(running.Stepping));
                break;
            case BondRequest.Herringbone herringbone:
                json.WriteNumber("abreast", herringbone.Abreast);
                break;
            case BondRequest.Hexagon hexagon:
                json.WriteString("up", Words.HexagonEnds.Say(hexagon.PointedUp));
                if (hexagon.Point is { } point) json.WriteLength("point", point);
                break;
            case BondRequest.Octagon { Corner: { } corner }:
                json.WriteLength("corner", corner);
                break;
            case BondRequest.Chevron chevron:
                json.WriteNumber("slope", chevron.Slope.Degrees);
                break;
            case BondRequest.Planks planks:
                json.WriteLength("stagger", planks.Stagger);
                json.WriteString("start", planks.Start);
                break;
            case BondRequest.Mosaic mosaic:
                json.WriteNumber("across", mosaic.Across);
                json.WriteNumber("high", mosaic.Up);
                break;
        }

        if (bond.With.Count > 0) json.WriteNames("with", bond.With);
        if (bond.Turn != Angle.Zero) json.WriteNumber("turned", bond.Turn.Degrees);
        json.WriteEndObject();
    }

    private static Form Kind(BondRequest bond) => bond switch
    {
        BondRequest.Grid => BondForms.Grid,
        BondRequest.Running => BondForms.Running,
        BondRequest.Herringbone => BondForms.Herringbone,
        BondRequest.Basketweave => BondForms.Basketweave,
        BondRequest.Pinwheel => BondForms.Pinwheel,
        BondRequest.Windmill => BondForms.Windmill,
        BondRequest.Hexagon => BondForms.Hexagon,
        BondRequest.Octagon => BondForms.Octagon,
        BondRequest.Chevron => BondForms.Chevron,
        BondRequest.Modular => BondForms.Modular,
        BondRequest.Planks => BondForms.Planks,
        BondRequest.Mosaic => BondForms.Mosaic,
        _ => throw new ArgumentOutOfRangeException(nameof(bond), bond, "No word for this bond."),
    };
}
