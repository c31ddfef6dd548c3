using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>Where stakes stand: at the drains, at corners, each foot or 300 mm along walls, and so along the ways from the drain to the corners that it sees.</summary>
internal static class BedStakes
{
    public static IEnumerable<(string On, Length Along, Point Place)> Of(DrawnRing outline, IReadOnlyList<FoldLine> drains, IEnumerable<BedWay> ways, Tape tape)
    {
        var step = tape.Unit == LengthUnit.Inch ? Length.FromInches(12) : Length.FromMillimetres(300);
        for (var i = 0; i < drains.Count; i++)
        {
            var name = drains.Count == 1 ? "drain" : FormattableString.Invariant($"drain {i + 1}");
            yield return (name, Length.Zero, drains[i].From);
            if (drains[i].To != drains[i].From) yield return (name, Grid.Nearest(Nearby.Distance(Nearby.Of(drains[i].From), Nearby.Of(drains[i].To))), drains[i].To);
        }

        foreach (var part in FloorSides.Of(outline.Ring, Names(outline), tape.Mark.Steps, out _))
        {
            var along = Enumerable.Range(part.First, part.Count + 1).Select(i => outline.Ring.Points[i % outline.Ring.Points.Count]).ToList();
            foreach (var (at, place) in Each(along, step, tape.Mark.Steps)) yield return (part.Name, at, place);
        }

        foreach (var way in ways)
        {
            foreach (var (at, on) in Each([way.From, way.At], step, tape.Mark.Steps).Skip(1).Where(stake => stake.Place != way.At)) yield return ("to " + way.To, at, on);
        }
    }

    /// <summary>The straight ways to the corners that a drain sees.</summary>
    public static IEnumerable<BedWay> Ways(DrawnRing outline, WaterPaths paths, BedSurface surface, Tape tape)
    {
        var names = Names(outline);
        FloorSides.Of(outline.Ring, names, tape.Mark.Steps, out var corners);
        foreach (var corner in corners)
        {
            var place = outline.Ring.Points[corner];
            var (length, last) = paths.FromDrain(Place.Of(place));
            if (double.IsInfinity(length) || length <= OpenFloor.Hair) continue;
            yield return new($"{names[(corner + names.Count - 1) % names.Count]} and {names[corner]}", Nearby.Of((last.X * Length.StepsPerMillimetre, last.Y * Length.StepsPerMillimetre)), place, surface.At(Place.Of(place)) / length);
        }
    }

    private static Sequence<string> Names(DrawnRing outline) => outline.Sides.Select(side => side.Name).ToSequence();

    /// <summary>Places each so far along a line, and its last end; none beside that end, where the tape tells no difference.</summary>
    private static IEnumerable<(Length At, Point Place)> Each(List<Point> line, Length step, double mark)
    {
        var (gone, next) = (0.0, 0.0);
        var whole = Enumerable.Range(0, line.Count - 1).Sum(i => Nearby.Distance(Nearby.Of(line[i]), Nearby.Of(line[i + 1])));
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var ((x, y), (x2, y2)) = (Nearby.Of(line[i]), Nearby.Of(line[i + 1]));
            var length = Nearby.Distance((x, y), (x2, y2));
            for (; next < Math.Min(gone + length, whole - mark); next += step.Steps)
            {
                var part = (next - gone) / length;
                yield return (Grid.Nearest(next), Nearby.Of((x + (part * (x2 - x)), y + (part * (y2 - y)))));
            }

            gone += length;
        }

        yield return (Grid.Nearest(gone), line[^1]);
    }
}
