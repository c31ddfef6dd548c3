using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>An edge that stands wherever a thing that is not built yet will stand.</summary>
/// <param name="Thing">The thing's name.</param>
/// <param name="Name">The edge's name on the face.</param>
/// <param name="Least">How far it may move right or up, at the least; below zero for left and down.</param>
/// <param name="Most">At the most.</param>
/// <param name="Level">Whether it runs level, and so moves up and down.</param>
internal readonly record struct MovableEdge(string Thing, string Name, Length Least, Length Most, bool Level);

/// <summary>The edges of a face that its ranges leave open.</summary>
internal static class MovableEdges
{
    public static IEnumerable<MovableEdge> Of(Face face) => face.Openings.SelectMany(Of).Concat(face.Zones.SelectMany(Of)).Concat((face.Shape as FaceShape.Read)?.Fixtures.SelectMany(Of) ?? []);

    private static IEnumerable<MovableEdge> Of(Opening opening)
    {
        if (opening.Range is not { } range) yield break;
        var (box, name) = (opening.Ring.Bounds, opening.Name);
        if (range.Sideways is { } left) yield return new(name, name + ".left", left.Least - box.Left, left.Most - box.Left, Level: false);
        if (Far(range.Sideways, box.Left, range.Width, box.Width) is { } right)
        {
            var most = range.Studs is { } studs ? Length.Min(right.Most, studs.Most - box.Right) : right.Most;
            yield return new(name, name + ".right", right.Least, most, Level: false);
        }

        if (range.Bottom is { } bottom) yield return new(name, name + ".bottom", bottom.Least - box.Bottom, bottom.Most - box.Bottom, Level: true);
        if (Far(range.Bottom, box.Bottom, range.Height, box.Height) is { } top) yield return new(name, name + ".top", top.Least, top.Most, Level: true);
    }

    /// <summary>How far the far edge may move: it goes with the place and with the size.</summary>
    private static Span? Far(Span? place, Length from, Span? size, Length much) => place is null && size is null
        ? null
        : new(((place?.Least ?? from) - from) + ((size?.Least ?? much) - much), ((place?.Most ?? from) - from) + ((size?.Most ?? much) - much));

    private static IEnumerable<MovableEdge> Of(Zone zone)
    {
        if (zone is Zone.Strip { Range: { } range } strip) yield return new(strip.Name, strip.Name, range.Least - strip.From, range.Most - strip.From, Level: true);
    }

    private static IEnumerable<MovableEdge> Of(Fixture fixture)
    {
        if (fixture.Range is not { } range) yield break;
        var name = fixture.Name;
        if (range.Height is { } height) yield return new(name, name, height.Least - fixture.HeightLeft, height.Most - fixture.HeightLeft, Level: true);
        if (range.From is { } from) yield return new(name, name + ".left", from.Least - fixture.From, from.Most - fixture.From, Level: false);
        if (range.To is { } to && fixture.To is { } end) yield return new(name, name + ".right", to.Least - end, to.Most - end, Level: false);
    }
}
