using System.Globalization;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads how quickly the user works, and how long products hold.</summary>
internal static class PaceReader
{
    private const double SquareFoot = 0.09290304, Foot = 0.3048;

    // A task that takes a thousand hours is a slip.
    public const int MostMinutes = 1000 * 60;

    private static readonly (string Unit, PaceUnit Of, double Times)[] Units =
    [
        ("m2", PaceUnit.SquareMetres, 1), ("m²", PaceUnit.SquareMetres, 1), ("ft2", PaceUnit.SquareMetres, SquareFoot), ("ft²", PaceUnit.SquareMetres, SquareFoot), ("sq ft", PaceUnit.SquareMetres, SquareFoot),
        ("m", PaceUnit.Metres, 1), ("ft", PaceUnit.Metres, Foot), ("pieces", PaceUnit.Pieces, 1), ("tiles", PaceUnit.Pieces, 1), ("cuts", PaceUnit.Cuts, 1), ("lines", PaceUnit.Lines, 1),
    ];

    /// <summary>The paces, and that of cutting.</summary>
    public static (Sequence<KindPace> Paces, Pace? Cutting) Read(Entry? entry, Values values)
    {
        if (Fields.Open(entry, WorkForms.Pace, values) is not { } fields) return ([], null);
        var paces = new List<KindPace>();
        foreach (var (word, kind) in Words.PaceFields)
        {
            if (Pace(fields[word], values, PaceUnits.Of(kind)) is { } pace) paces.Add(new(kind, pace));
        }

        return (paces.ToSequence(), Pace(fields["cutting"], values, [PaceUnit.Cuts]));
    }

    /// <summary>Holds by their kinds.</summary>
    public static Sequence<HoldTime> Holds(Entry? entry, Values values)
    {
        if (Fields.Open(entry, WorkForms.Holds, values) is not { } fields) return [];
        var holds = new List<HoldTime>();
        foreach (var (word, kind) in Words.HoldFields)
        {
            if (TimeReading.Span(fields[word], values, 0, HoldTime.Most) is { } minutes) holds.Add(new(kind, minutes));
        }

        return holds.ToSequence();
    }

    private static Pace? Pace(Entry? entry, Values values, Sequence<PaceUnit> units)
    {
        if (entry is null) return null;
        var text = ((entry as Entry.Text)?.Value ?? "").Trim();
        if (units.Contains(PaceUnit.Minutes) && TimeReading.Minutes(text) is >= 1 and <= MostMinutes and var minutes) return new(PaceUnit.Minutes, minutes);
        var digits = text.TakeWhile(c => char.IsAsciiDigit(c) || c == '.').Count();
        var unit = Units.FirstOrDefault(one => string.Equals(one.Unit, text[digits..].Trim(), StringComparison.Ordinal));
        if (unit.Unit is not null && units.Contains(unit.Of) && decimal.TryParse(text[..digits], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is >= 0.01m and <= 10_000m) return new(unit.Of, (double)number * unit.Times);
        values.Log.Add(entry, $"how much an hour, from 0.01 to 10,000, such as {Values.OneOf(units.Select(one => Example(one, values)))}");
        return null;
    }

    private static string Example(PaceUnit unit, Values values) => (unit, values.Unit == Plane.Measure.LengthUnit.Inch) switch
    {
        (PaceUnit.SquareMetres, true) => "12 ft2",
        (PaceUnit.SquareMetres, _) => "1.2 m2",
        (PaceUnit.Metres, true) => "30 ft",
        (PaceUnit.Metres, _) => "10 m",
        (PaceUnit.Pieces, _) => "20 pieces",
        (PaceUnit.Cuts, _) => "12 cuts",
        (PaceUnit.Lines, _) => "6 lines",
        _ => "2 h for each such task",
    };
}
