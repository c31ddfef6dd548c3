using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The piece that is picked out on the drawing of a run, and the way from it to others.</summary>
internal sealed class Picking(Plan plan, Bench bench)
{
    private readonly PiecePictures _pictures = new(plan);
    private (int Face, int Index)? _at;

    private RunPlan Run => bench.Run;

    /// <summary>The face of the piece; null when none is picked.</summary>
    public int? Face => _at?.Face;

    /// <summary>What is said of the piece; null when none is picked.</summary>
    public PieceSaid? Said => _at is not { } at ? null : Trim(at) is { } trim ? PieceSaid.Of(plan, trim) : PieceSaid.Of(plan, _pictures, Piece(at));

    /// <summary>Its outline on the drawing; empty when none is picked.</summary>
    public string Outline => _at is { } at ? bench.Drawn.Outline(at.Face, Rings(at)) : "";

    public void Clear() => _at = null;

    /// <summary>Says a cut piece to nobody, so that the next is said at once.</summary>
    public void Ready()
    {
        for (var f = 0; f < Run.Faces.Count; f++)
        {
            if (Run.Faces[f].Pieces.FirstOrDefault(piece => piece.Kind != PieceKind.Full) is not { } piece) continue;
            _ = PieceSaid.Of(plan, _pictures, piece);
            return;
        }
    }

    /// <summary>Picks the piece at a place of the drawing, or the one nearest to it.</summary>
    public void At(double x, double y, bool nearest)
    {
        var (face, place) = bench.Drawn.OnFace(x, y);
        _at = null;
        var least = double.MaxValue;
        for (var i = 0; i < Count(face); i++)
        {
            var rings = Rings((face, i));
            var box = rings[0].Bounds;
            var off = Math.Max(0, Math.Max((box.Left - place.X).Steps, (place.X - box.Right).Steps)) + (double)Math.Max(0, Math.Max((box.Bottom - place.Y).Steps, (place.Y - box.Top).Steps));
            if (off == 0 && !Holds(rings, place)) off = 1;
            if (off >= least || (off > 0 && !nearest)) continue;
            (least, _at) = (off, (face, i));
        }
    }

    /// <summary>Picks the piece after or before, as one reads the walls.</summary>
    public void Step(int by)
    {
        if (_at is not { } at) return;
        var (face, index) = (at.Face, at.Index + by);
        for (var tries = 0; tries <= Run.Faces.Count; tries++)
        {
            if (index >= 0 && index < Count(face)) break;
            face = (face + by + Run.Faces.Count) % Run.Faces.Count;
            index = by > 0 ? 0 : Count(face) - 1;
        }

        _at = (face, index);
    }

    /// <summary>Picks the piece beside it on the run, one way; stays where there is none.</summary>
    public void Beside(int right, int up)
    {
        if (_at is not { } at) return;
        var (x, y) = Middle(at);
        var least = long.MaxValue;
        for (var f = 0; f < Run.Faces.Count; f++)
        {
            for (var i = 0; i < Count(f); i++)
            {
                var (otherX, otherY) = Middle((f, i));
                var (on, aside) = right != 0 ? ((otherX - x) * right, Math.Abs(otherY - y)) : ((otherY - y) * up, Math.Abs(otherX - x));
                // What lies more to the side than on is beside another way.
                if (on <= 0 || aside > on || on + (3 * aside) >= least) continue;
                (least, _at) = (on + (3 * aside), (f, i));
            }
        }
    }

    private static bool Holds(IReadOnlyList<Ring> rings, Point place) =>
        RingChecks.Locate(rings[0], place) != Whereabouts.Outside && rings.Skip(1).All(hole => RingChecks.Locate(hole, place) != Whereabouts.Inside);

    /// <summary>A face's tiles come first, then the trims of its wall.</summary>
    private int Count(int face) => Run.Faces[face].Pieces.Count + bench.Drawn.Trims[face].Count;

    private TrimPart? Trim((int Face, int Index) at) => at.Index - Run.Faces[at.Face].Pieces.Count is >= 0 and var index ? bench.Drawn.Trims[at.Face][index] : null;

    private Piece Piece((int Face, int Index) at) => Run.Faces[at.Face].Pieces[at.Index];

    private IReadOnlyList<Ring> Rings((int Face, int Index) at) => Trim(at) is { } trim ? [trim.Outline] : [Piece(at).Outline, .. Piece(at).Inner];

    private (long X, long Y) Middle((int Face, int Index) at)
    {
        var (face, box) = (Run.Faces[at.Face].Face, (Trim(at)?.Outline ?? Piece(at).Outline).Bounds);
        return (((box.Left + box.Right).Steps / 2) + face.Unrolled.Steps, ((box.Bottom + box.Top).Steps / 2) + face.Raised.Steps);
    }
}
