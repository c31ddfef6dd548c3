using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>Whether a want is held, against the pieces as they lie on the face and legs that a geometry library measures.</summary>
public sealed class PatternWantsTests(ITestOutputHelper output)
{
    /// <summary>A hundredth of a millimetre, and what rounding may add to it.</summary>
    private const long Slack = PatternCutter.Hair + 4;

    private static readonly Gen<(PatternRun Run, int Wants, int Start, long X, long Y)> Cases = Gen.Select(
        PatternRuns.Small, Gen.Int[0, 100_000], Gen.Int[-1, 30], Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000]);

    private readonly Lock _lock = new();
    private readonly Dictionary<string, (int Held, int Missed)> _told = [];

    [Fact]
    public void A_want_is_held_where_the_pieces_hold_it()
    {
        Cases.Each(Check, iter: 1_500);
        foreach (var (want, (held, missed)) in _told.OrderBy(told => told.Key, StringComparer.Ordinal)) output.WriteLine($"{want}: held {held} times, missed {missed}");
    }

    private void Check((PatternRun Run, int Wants, int Start, long X, long Y) given)
    {
        var model = new PatternModel(given.Run.Problem(new(null, Length.FromMillimetres(10), HalfTile: false), PromiseTests.WantsOf(given.Run, given.Wants)));
        var (x, y) = (given.X, given.Y);
        if (given.Start >= 0)
        {
            // Where a want may be held; anywhere else most are missed.
            var starts = PatternStarts.Stretches(model).Take(given.Start + 1).ToList();
            if (starts.Count > 0) (x, y) = (Grid.Nearest(starts[^1].X).Steps, Grid.Nearest(starts[^1].Y).Steps);
        }

        var held = model.Held(model.At(x, y));
        for (var i = 0; i < held.Length; i++)
        {
            if (model.Checks[i].Want < 0) continue;
            var want = model.Problem.Run.Wants[model.Checks[i].Want];
            if (Judged(model, want, x, y) is not { } judged) continue;
            Assert.True(held[i] == judged, $"{want} is said to be {(held[i] ? "held" : "missed")} at {x},{y}");
            lock (_lock)
            {
                var (yes, no) = _told.GetValueOrDefault(want.GetType().Name);
                _told[want.GetType().Name] = judged ? (yes + 1, no) : (yes, no + 1);
            }
        }
    }

    /// <summary>Whether it is held; null where a hair decides.</summary>
    private static bool? Judged(PatternModel model, Want want, long x, long y) => want switch
    {
        Want.JointAtHeight at => InAJoint(model, at, x, y),
        Want.AtLeast { Size: { } size } least => Sure(Legs(model, least.Edge, x, y).Select(cut => cut.Leg - size.Steps)),
        Want.AtLeast { PartOfTile: { } part } least => Sure(Legs(model, least.Edge, x, y).Select(cut => cut.Leg - (cut.Depth * part.Numerator / part.Denominator))),
        // Nothing is cut there by more than the tape shows; whether it then is held hangs on the gap beside it too.
        Want.JointOnEdge on => Legs(model, on.Edge, x, y).Any(cut => cut.Depth - cut.Leg > Length.FromMillimetres(1).Steps + Slack) ? false : null,
        Want.EqualCuts equal => Alike(Legs(model, equal.One, x, y).ToList(), Legs(model, equal.Other, x, y).ToList()),
        Want.Centred { On: CentreOn.Tile } centred => OnMiddle(model, centred, x, y),
        _ => null,
    };

    private static bool? Sure(IEnumerable<double> over)
    {
        var least = over.DefaultIfEmpty(double.MaxValue).Min();
        return Math.Abs(least) < 2 ? null : least > 0;
    }

    /// <summary>The narrowest legs differ by no more than a millimetre; null where nothing is cut at one of the edges.</summary>
    private static bool? Alike(List<SideCut> one, List<SideCut> other)
    {
        // A cut by a hair may count or not, and may be the narrowest of all.
        if (one.Count == 0 || other.Count == 0 || one.Exists(cut => !cut.Sure) || other.Exists(cut => !cut.Sure)) return null;
        var over = Math.Abs(one.Min(cut => cut.Leg) - other.Min(cut => cut.Leg)) - Length.FromMillimetres(1).Steps;
        return Math.Abs(over) < 4 ? null : over < 0;
    }

    private static IEnumerable<SideCut> Legs(PatternModel model, EdgeRef edge, long x, long y)
    {
        var face = Index(model, edge.Face);
        return CutTiles.Of(model, face, x, y).SelectMany(tile => tile.Sides)
            .Where(cut => string.Equals(model.Problem.Run.Faces[face].Edges[cut.Edge].Name, edge.Edge, StringComparison.Ordinal));
    }

    /// <summary>No piece of the face reaches over the height and under it, and the tiles that lie level beside it stand half a joint off.</summary>
    private static bool? InAJoint(PatternModel model, Want.JointAtHeight at, long x, long y)
    {
        var (pieces, joint) = (Pieces(model, at.Face, x, y).ToList(), model.Problem.Joint.Steps);
        var across = pieces.Select(piece => piece.Outline.Bounds).Select(box => Math.Min((box.Top - at.Height).Steps, (at.Height - box.Bottom).Steps)).DefaultIfEmpty(0).Max();
        if (across > Slack) return false;
        if (across > Slack - 8) return null;

        // By how much the sides that run along the joint stand off its middle.
        var offs = pieces.SelectMany(piece => Level(piece.Laid)).Select(height => Math.Abs((height - at.Height).Steps)).Where(off => off <= joint + Slack)
            .Select(off => Math.Abs(off - (joint / 2))).ToList();
        if (offs.Count == 0 || (offs.Max() > Slack - 8 && offs.Max() <= Slack)) return null;
        return offs.Max() <= Slack;
    }

    private static IEnumerable<Length> Level(Ring laid)
    {
        for (var k = 0; k < laid.Points.Count; k++)
        {
            var (from, to) = (laid.Points[k], laid.Points[(k + 1) % laid.Points.Count]);
            if ((from.Y - to.Y).Abs() <= Length.FromSteps(2) && from.X != to.X) yield return from.Y;
        }
    }

    /// <summary>The middle of one of the face's tiles stands on the face's middle, in the field.</summary>
    private static bool? OnMiddle(PatternModel model, Want.Centred centred, long x, long y)
    {
        var face = model.Problem.Run.Faces[Index(model, centred.Face)];
        var middle = (face.Field.Outer.Bounds.Left.Steps + face.Field.Outer.Bounds.Right.Steps) / 2;
        var field = new Judge(face.Field).Field;
        var (held, doubt) = (false, false);
        foreach (var piece in Pieces(model, centred.Face, x, y))
        {
            var (right, up) = (piece.Laid.Points.Average(p => (double)p.X.Steps), piece.Laid.Points.Average(p => (double)p.Y.Steps));
            var (off, at) = (Math.Abs(right - middle), Judge.Factory.CreatePoint(new NetTopologySuite.Geometries.Coordinate(right, up)));
            if (off > Slack) continue;
            if (off > Slack - 8 || at.IsWithinDistance(field.Boundary, 8)) doubt = true;
            else held |= field.Contains(at);
        }

        return doubt ? null : held;
    }

    private static IEnumerable<Piece> Pieces(PatternModel model, string face, long x, long y) =>
        new PatternCutter(model.Fields[Index(model, face)], model.Judged, model.Problem.Products, Tape.Millimetres).Cut(x, y, "A");

    private static int Index(PatternModel model, string face) =>
        Enumerable.Range(0, model.Fields.Length).First(i => string.Equals(model.Problem.Run.Faces[i].Name, face, StringComparison.Ordinal));
}
