using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A bed that falls, from above and cut through.</summary>
internal static class BedPicture
{
    private const double Size = 8;

    // So far out along a way its fall may be said.
    private static readonly double[] s_shares = [0.5, 0.84, 0.42, 0.6, 0.75, 0.25];

    /// <summary>Its floor from above, with the height at each stake and the fall along each way to a corner.</summary>
    public static void Plan(Pen pen, Bed bed, Ring outline, IEnumerable<Ring> openings, FaceMap map, Figures figures)
    {
        pen.Area(map.Ring(outline), Fill.Wall, Stroke.Outline, bed.Face);
        foreach (var opening in openings) pen.Area(map.Ring(opening), Fill.Opening, Stroke.FixtureEdge);
        foreach (var way in bed.Ways) pen.Line(map.At(way.From), map.At(way.At), Stroke.Leader);
        foreach (var drain in bed.Drains)
        {
            if (drain.From != drain.To) pen.Line(map.At(drain.From), map.At(drain.To), Stroke.Bar);
            else pen.Area(Pen.Circle(map.At(drain.From), 2), Fill.Fixture, Stroke.FixtureEdge, "drain");
        }

        // Where figures would cover each other the list has them.
        var taken = bed.Edges.Select(edge => Named(pen, edge, map)).OfType<Frame>().ToList();
        var middle = Frame.Around(map.Ring(outline)).Middle;
        foreach (var stake in bed.Stakes.OrderBy(stake => stake.Along == default ? 0 : 1).DistinctBy(stake => stake.Place))
        {
            var at = map.At(stake.Place);
            pen.Area(Pen.Circle(at, 0.7), Fill.Ink);
            // Inwards of its stake, so that it stands on the floor.
            var (dx, dy) = (middle.X - at.X, middle.Y - at.Y);
            var far = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
            var spot = new Spot(at.X + (7 * dx / far), at.Y + (4.5 * dy / far));
            if (far < 3) spot = new(at.X, at.Y + 4);
            var box = Pen.BoxAround(spot, figures.Near(stake.Over), Size, bold: false, upright: false);
            if (taken.Exists(box.Meets)) continue;
            taken.Add(box);
            pen.TextAround(spot, figures.Near(stake.Over), Size, onPaper: true);
        }

        foreach (var way in bed.Ways)
        {
            // Half way, or where else no stake's height stands.
            var (from, to) = (map.At(way.From), map.At(way.At));
            var fall = string.Create(CultureInfo.InvariantCulture, $"{way.Fall * 100:0.0} %");
            foreach (var share in s_shares)
            {
                var spot = new Spot(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
                var box = Pen.BoxAround(spot, fall, Size, bold: false, upright: false);
                if (taken.Exists(box.Meets)) continue;
                taken.Add(box);
                pen.TextAround(spot, fall, Size, ink: Ink.Quiet, onPaper: true);
                break;
            }
        }
    }

    /// <summary>Writes an edge's name beside its middle, off the floor, since the list of stakes goes by it; where it stands, or null where the edge is shorter than its name.</summary>
    private static Frame? Named(Pen pen, BedEdge edge, FaceMap map)
    {
        const double Aside = 3.2;
        var (from, to) = (map.At(edge.From), map.At(edge.To));
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        // The floor lies to the left of its edges; on paper y runs down.
        var spot = new Spot(((from.X + to.X) / 2) - (Aside * dy / length), ((from.Y + to.Y) / 2) + (Aside * dx / length));
        var upright = Math.Abs(dy) > Math.Abs(dx);
        if (Pen.BoxAround(new(0, 0), edge.Name, Size, bold: false, upright: false).Width >= length) return null;
        pen.TextAround(spot, edge.Name, Size, ink: Ink.Quiet, upright: upright);
        return Pen.BoxAround(spot, edge.Name, Size, bold: false, upright);
    }

    /// <summary>What the section shows.</summary>
    public static string CutTitle(Bed bed) => $"Section along the {(bed.Request.Toward is null ? "shortest and the longest way" : "longest way")} to {bed.Low}, heights enlarged";

    /// <summary>The longest way to the drain, and on its other side the shortest, heights enlarged; of what falls to an edge the one way.</summary>
    public static void Cut(Pen pen, Bed bed, Figures figures, Frame frame)
    {
        const double Highest = 20;
        var nearest = bed.Request.Toward is null ? bed.Nearest : Length.Zero;
        var along = frame.Width / (double)(nearest + bed.Farthest).Millimetres;
        var up = Highest / Math.Max(1e-6, (double)bed.Greatest.Millimetres);
        var (foot, drain) = (frame.Bottom - 9, frame.X + (along * (double)nearest.Millimetres));
        var (near, least, most) = (up * (double)(bed.Least + bed.OverNearest).Millimetres, up * (double)bed.Least.Millimetres, up * (double)bed.Greatest.Millimetres);
        Spot[] ring = [new(frame.X, foot), new(frame.Right, foot), new(frame.Right, foot - most), new(drain, foot - least), .. nearest > Length.Zero ? [new Spot(frame.X, foot - near)] : Array.Empty<Spot>()];
        pen.Area(ring.ToSequence(), Fill.Wall, Stroke.Outline, "bed");
        pen.Line(drain, foot, drain, foot - Math.Max(least, 3), Stroke.Bar);
        if (nearest > Length.Zero)
        {
            Measures.Level(pen, frame.X, drain, foot + 5.5, figures.Near(nearest), Measures.Spill.Before);
            Measures.Upright(pen, frame.X - 4, foot - near, foot, figures.Near(bed.Least + bed.OverNearest));
        }

        Measures.Level(pen, drain, frame.Right, foot + 5.5, figures.Near(bed.Farthest));
        Measures.Upright(pen, frame.Right + 6, foot - most, foot, figures.Near(bed.Greatest));
        pen.TextAround(new(drain, foot - Math.Max(least, 3) - 3), figures.Near(bed.Least), Size, onPaper: true);
    }
}
