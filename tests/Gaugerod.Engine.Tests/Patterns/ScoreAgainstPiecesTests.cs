using CsCheck;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>What a place of a bond is scored by, against the pieces that are cut there and legs that a geometry library measures.</summary>
public sealed class ScoreAgainstPiecesTests(ITestOutputHelper output)
{
    private static readonly Gen<(PatternRun Run, long X, long Y, int Sliver)> Cases =
        from run in PatternRuns.Any
        from at in Gen.Select(Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000])
        from corner in Gen.Int[0, 5]
        from sliver in Gen.Int[5, 60]
        select Put(run, at.Item1, at.Item2, corner, sliver);

    private int _tiles, _runs, _slivers;

    [Fact]
    public void Cuts_slivers_and_the_smallest_cut_are_those_of_the_tiles_that_sides_run_through()
    {
        Cases.Each(Check, iter: 400);
        output.WriteLine($"{_runs} runs, {_tiles} cut tiles, {_slivers} slivers");
    }

    private void Check((PatternRun Run, long X, long Y, int Sliver) given)
    {
        var limit = Length.FromMillimetres(given.Sliver);
        var model = new PatternModel(given.Run.Problem(new(null, limit, HalfTile: true)));
        var place = model.At(given.X, given.Y);
        var half = model.HasUnderHalf(place);
        var tiles = Enumerable.Range(0, model.Fields.Length).SelectMany(face => CutTiles.Of(model, face, given.X, given.Y)).ToList();

        Assert.InRange(place.Score.Cuts, tiles.Count(tile => tile.Sure), tiles.Count);
        var legs = tiles.SelectMany(tile => tile.Sides).ToList();
        CheckSmallest(place, legs, model);
        bool Sliver(SideCut cut, double more) => cut.Leg < Math.Min(limit.Steps, cut.Depth / 2) + more;
        var (surely, perhaps) = (tiles.Count(tile => tile.Sides.Exists(cut => cut.Sure && Sliver(cut, -1))), tiles.Count(tile => tile.Sides.Exists(cut => Sliver(cut, 1))));
        Assert.InRange(place.Score.Slivers, surely, perhaps);
        if (legs.Exists(cut => cut.Sure && cut.Leg < (cut.Depth / 2) - 1)) Assert.True(half);
        if (!legs.Exists(cut => cut.Leg < (cut.Depth / 2) + 1)) Assert.False(half);

        // One wish a face for no cut under half a tile.
        Assert.InRange(place.Score.WishesMissed, half ? 1 : 0, half ? model.Fields.Length : 0);
        CheckPieces(given, model, place);
        _ = (Interlocked.Increment(ref _runs), Interlocked.Add(ref _tiles, tiles.Count), Interlocked.Add(ref _slivers, place.Score.Slivers));
    }

    private static void CheckSmallest(PatternPlacing place, List<SideCut> legs, PatternModel model)
    {
        var (sure, any) = (legs.Where(cut => cut.Sure).Select(cut => cut.Leg), legs.Select(cut => cut.Leg));
        if (place.Score.Cuts > 0) Assert.InRange(place.Smallest, any.Min() - 1, sure.DefaultIfEmpty(double.MaxValue).Min() + 1);
        else Assert.Equal(model.Lines.Max(line => line.GreatestDepth), place.Smallest);
        Assert.Equal(model.Problem.Run.Tape.Down(Length.FromSteps((long)place.Smallest)), place.Score.SmallestCut);
    }

    /// <summary>Each tile counted is one that pieces with a cut are made of, but where what is left is nowhere wider than a hair or so.</summary>
    private static void CheckPieces((PatternRun Run, long X, long Y, int Sliver) given, PatternModel model, PatternPlacing place)
    {
        var (cut, thin, least) = (0, 0, long.MaxValue);
        for (var f = 0; f < model.Fields.Length; f++)
        {
            var pieces = new PatternCutter(model.Fields[f], model.Judged, given.Run.Given.Products, Tape.Millimetres).Cut(given.X, given.Y, "A").Where(IsCut).ToList();
            cut += pieces.Select(piece => piece.Frame!.Tile).Distinct().Count();
            least = Math.Min(least, pieces.Select(piece => piece.Smallest.Steps).DefaultIfEmpty(long.MaxValue).Min());
            var judge = CutTiles.JudgeOf(model.Fields[f]);
            thin += CutTiles.Of(model, f, given.X, given.Y).Count(tile => judge.Parts(tile.Tile).All(part => part.Buffer(-PatternCutter.Hair).IsEmpty));
        }

        Assert.InRange(place.Score.Cuts, cut, cut + thin);
        if (thin == 0 && cut > 0) Assert.Equal((long)place.Smallest, least);
    }

    /// <summary>Whether a piece is cut otherwise than by a drill; an opening wholly in a tile leaves no cut on its outline.</summary>
    private static bool IsCut(Piece piece) => piece.Cuts.Count > 0 || piece.Kind is not (PieceKind.Full or PieceKind.Hole);

    /// <summary>Half of the places have a tile's origin on a corner of the field, where things go wrong.</summary>
    private static (PatternRun Run, long X, long Y, int Sliver) Put(PatternRun run, long x, long y, int corner, int sliver)
    {
        if (corner > 2) return (run, x, y, sliver);
        var rings = new TurnedField(FieldRings.Of(run.Faces[0]), Plane.Shapes.Heading.Of(run.Turn)).Rings[0];
        var at = rings[corner % rings.Length];
        return corner == 0 ? (run, at.X, y, sliver) : (run, at.X, at.Y, sliver);
    }
}
