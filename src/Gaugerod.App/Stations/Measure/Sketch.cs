using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>A place on the face, in millimetres, for drawing only.</summary>
internal readonly record struct Spot(double X, double Y);

/// <summary>A name to be written beside an edge or in the middle of a thing, and the field it leads to.</summary>
/// <param name="Text">The name.</param>
/// <param name="Reading">What was read there, as typed; empty for nothing.</param>
/// <param name="At">Where it belongs.</param>
/// <param name="Field">The id of the field it leads to.</param>
/// <param name="Side">Which side of the face it stands on: <c>foot right head left</c>, else in the face.</param>
internal sealed record SketchName(string Text, string Reading, Spot At, string Field, string Side);

/// <summary>A drain of a face that falls.</summary>
/// <param name="From">Its middle, or where a channel begins.</param>
/// <param name="To">The same, or where the channel ends.</param>
/// <param name="Name">What it is called; empty where its name stands there already.</param>
internal sealed record SketchDrain(Spot From, Spot To, string Name);

/// <summary>A face to be drawn, as exact as is known.</summary>
/// <param name="Outline">The face's corners.</param>
/// <param name="Field">What tile covers, a ring each; while only the readings are drawn, the zones as asked.</param>
/// <param name="Openings">The openings.</param>
/// <param name="Fixtures">The fixtures, where they are drawn apart from the outline.</param>
/// <param name="Holes">The holes' middles and diameters.</param>
/// <param name="LevelLine">The level line's height; null for none.</param>
/// <param name="Names">The names.</param>
/// <param name="Exact">Whether it is the face as finished, not a rough drawing of the readings.</param>
internal sealed record Sketch(
    IReadOnlyList<Spot> Outline, IReadOnlyList<IReadOnlyList<Spot>> Field, IReadOnlyList<IReadOnlyList<Spot>> Openings, IReadOnlyList<IReadOnlyList<Spot>> Fixtures,
    IReadOnlyList<(Spot At, double Diameter)> Holes, double? LevelLine, IReadOnlyList<SketchName> Names, bool Exact)
{
    /// <summary>What was read corner to corner, to be drawn in it; null for a face given otherwise.</summary>
    public Desk.SurveyLook? Survey { get; init; }

    /// <summary>Where the face falls to.</summary>
    public IReadOnlyList<SketchDrain> Drains { get; init; } = [];

    public static IReadOnlyList<Spot> Of(Ring ring) => [.. ring.Points.Select(Of)];

    public static Spot Of(Point point) => new((double)point.X.Millimetres, (double)point.Y.Millimetres);
}
