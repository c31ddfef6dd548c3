using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>Says wants in words.</summary>
internal static class WantText
{
    /// <summary>The want as a short phrase: <c>a joint on the bench on north</c>.</summary>
    public static string Phrase(Want want, Tape tape) => want switch
    {
        Want.JointAtHeight at => $"a joint {LengthText.Nearest(at.Height, tape)} up on {at.Face}",
        Want.JointOnEdge on => $"a joint on {Name(on.Edge)}",
        Want.FullCourse full => $"a full course at {Name(full.Edge)}",
        Want.AtLeast { Size: { } size } least => $"at least {LengthText.Nearest(size, tape)} along {Name(least.Edge)}",
        Want.AtLeast { PartOfTile: { } part } least => $"at least {Part(part)} a tile along {Name(least.Edge)}",
        Want.Centred centred => $"{On(centred.On)} on the middle of {(centred.Opening is { } opening ? $"the {opening} on {centred.Face}" : centred.Face)}",
        Want.HoleOn hole => $"{Crossing(hole.On)} on the middle of {(hole.Hole.StartsWith("the ", StringComparison.Ordinal) ? "" : "the ")}{hole.Hole} on {hole.Face}",
        Want.InLine line => $"a joint of {line.Face} in line with one of {line.With}",
        Want.EqualCuts equal => $"equal cuts at {Name(equal.One)} and {Name(equal.Other)}",
        _ => throw new ArgumentOutOfRangeException(nameof(want), want, "No words for this want."),
    };

    private static string Name(EdgeRef edge) => EdgeWords.Of(edge.Face, edge.Edge);

    private static string On(CentreOn on) => on switch
    {
        CentreOn.Tile => "a tile",
        CentreOn.Joint => "a joint",
        _ => "a tile or a joint",
    };

    private static string Crossing(CentreOn on) => on switch
    {
        CentreOn.Tile => "the middle of a tile",
        CentreOn.Joint => "a crossing of joints",
        _ => "a crossing of joints or the middle of a tile",
    };

    private static string Part((int Numerator, int Denominator) part) => part == (1, 2)
        ? "half"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{part.Numerator}/{part.Denominator} of");
}
