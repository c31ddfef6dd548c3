using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>Whether a joint lies on an edge, as the plan says it, against the outlines of the pieces: what they touch, and what they lack of a whole tile.</summary>
public sealed class EdgeWantsAgainstPiecesTests(ITestOutputHelper output)
{
    /// <summary>A hundredth of a millimetre, in steps: nearer than anyone can set a tile.</summary>
    private const double Hair = 32, Mark = 3200;

    [Fact]
    public void A_joint_is_held_on_an_edge_only_where_no_tile_is_cut_along_it_and_missed_only_where_one_is()
    {
        var (held, missed, sloping) = (0, 0, 0);
        SlopingRoom.Any.EachDear(
            room =>
            {
                var job = room.Job();
                if (JobCheck.Check(job).Count > 0) return;
                var plan = Planner.Plan(job).Runs[0];
                var outcome = Assert.Single(plan.Best.Wants);
                var (most, where) = (0.0, "");
                foreach (var edge in plan.Faces[0].Face.Edges.Where(edge => edge.Name == room.Edge))
                {
                    foreach (var piece in plan.Faces[0].Pieces)
                    {
                        if (Off(piece, edge) is { } off && off > most) (most, where) = (off, $"{piece.Outline.Bounds} at {edge.From} to {edge.To}");
                    }
                }

                if (outcome.Held) Assert.True(most <= Mark + (3 * Hair), $"{outcome.Text} A tile is {most / 3200:0.00} mm off it: {where}.");
                else Assert.True(most > Hair / 2, $"{outcome.Text} No tile is off it.");
                if (outcome.Held) Interlocked.Increment(ref held);
                else Interlocked.Increment(ref missed);
                if (room.Edge == "bench" && Math.Abs(room.Bench.Left - room.Bench.Right) > 10) Interlocked.Increment(ref sloping);
            },
            Cases.IsLong ? 1500 : 250);
        output.WriteLine($"held {held}, missed {missed}, sloping benches {sloping}");
        Assert.True(held > 40 && missed > 80 && sloping > 20, $"held {held}, missed {missed}, sloping {sloping}");
    }

    /// <summary>
    /// How far the side of a piece's whole tile stands off an edge: what is cut off there, or the gap that is left; null where the piece is not beside the edge.
    /// </summary>
    private static double? Off(Piece piece, FieldEdge edge)
    {
        var line = (X: (double)(edge.To.X - edge.From.X).Steps, Y: (double)(edge.To.Y - edge.From.Y).Steps);
        var length = Math.Sqrt((line.X * line.X) + (line.Y * line.Y));
        var (x, y) = (line.X / length, line.Y / length);
        double In(Point point) => ((point.Y - edge.From.Y).Steps * x) - ((point.X - edge.From.X).Steps * y);
        double On(Point point) => ((point.X - edge.From.X).Steps * x) + ((point.Y - edge.From.Y).Steps * y);
        var points = piece.Outline.Points;
        var box = (From: points.Min(On), To: points.Max(On));
        var along = Math.Min(box.To, length) - Math.Max(box.From, 0);
        if (along <= 3200) return null;

        var whole = piece.Frame?.Laid.Bounds ?? piece.Cell;
        double? off = null;
        for (var i = 0; i < points.Count; i++)
        {
            var (one, other) = (points[i], points[(i + 1) % points.Count]);
            if (Math.Abs(In(one)) > 8 || Math.Abs(In(other)) > 8 || Math.Min(Math.Max(On(one), On(other)), length) - Math.Max(Math.Min(On(one), On(other)), 0) <= 3200) continue;
            foreach (var point in new[] { one, other }) off = Math.Max(off ?? 0, Beyond(whole, point, x, y));
        }

        if (off is not null) return off;
        // It may still stand within a joint of it.
        var near = points.Min(In);
        return near > 8 && near <= 9600 + Hair ? near : null;
    }

    /// <summary>How far a whole tile would go on beyond a point of the edge.</summary>
    private static double Beyond(Box whole, Point point, double x, double y) => Math.Abs(x) > Math.Abs(y)
        ? (x > 0 ? point.Y - whole.Bottom : whole.Top - point.Y).Steps
        : (y < 0 ? point.X - whole.Left : whole.Right - point.X).Steps;
}
