using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>
/// Whether enough tile stands between a drilled hole and the piece's side: less than that breaks out under the drill. A hole
/// that a side runs through is nipped or sawn from there, so that side does not count.
/// </summary>
internal static class HoleRules
{
    /// <summary>A hundredth of a millimetre: a corner so near to the hole's ring was made by it.</summary>
    private const double Hair = 32;

    internal static IEnumerable<Finding> Findings(string face, Sequence<Hole> holes, Sequence<Piece> pieces, Tape tape)
    {
        foreach (var hole in holes)
        {
            if (hole.EdgeClear is not { } clear) continue;
            var round = HoleChecks.Round(hole);
            foreach (var piece in pieces)
            {
                if (!IsCutInto(piece, round) || Bridge(piece.Outline, hole, round) is not { } bridge || bridge >= clear) continue;
                yield return new(
                    FindingLevel.Warn, "hole-edge", $"{hole.Name} on {face}", $"A side or a corner of {piece.Id} is so near to the hole that drilling may break out there.",
                    $"at least {Shown.Fine(clear, tape)} of tile beside the hole", Shown.Fine(bridge, tape), Remarks.NoSource);
            }
        }
    }

    private static bool IsCutInto(Piece piece, Ring round) => piece.Inner.Prepend(piece.Outline).SelectMany(ring => ring.Points).Any(point => IsOn(round, point));

    /// <summary>The least tile between the hole and a side that it does not run through; null where every side is the hole's own.</summary>
    private static Length? Bridge(Ring outline, Hole hole, Ring round)
    {
        Length? least = null;
        for (var i = 0; i < outline.Points.Count; i++)
        {
            var (a, b) = (outline.Points[i], outline.Points[(i + 1) % outline.Points.Count]);
            if (IsOn(round, a) || IsOn(round, b)) continue;
            var bridge = Grid.Nearest(Off(hole.Centre, a, b) - (hole.Diameter.Steps / 2.0));
            if (least is null || bridge < least) least = bridge;
        }

        return least is { IsNegative: true } ? Length.Zero : least;
    }

    private static bool IsOn(Ring ring, Point point)
    {
        for (var i = 0; i < ring.Points.Count; i++)
        {
            if (Off(point, ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]) <= Hair) return true;
        }

        return false;
    }

    /// <summary>How far a place lies from a side, in steps.</summary>
    private static double Off(Point point, Point a, Point b)
    {
        var (dx, dy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var (x, y) = ((double)(point.X - a.X).Steps, (double)(point.Y - a.Y).Steps);
        var part = Math.Clamp(((x * dx) + (y * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return Math.Sqrt(Math.Pow(x - (part * dx), 2) + Math.Pow(y - (part * dy), 2));
    }
}
