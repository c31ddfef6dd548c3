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
    public PieceSaid? Said => _at is { } at ? PieceSaid.Of(plan, _pictures, Piece(at)) : null;

    /// <summary>Its outline on the drawing; empty when none is picked.</summary>
    public string Outline => _at is { } at ? bench.Drawn.Outline(at.Face, Piece(at).Inner.Prepend(Piece(at).Outline)) : "";

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
        var pieces = Run.Faces[face].Pieces;
        for (var i = 0; i < pieces.Count; i++)
        {
            var box = pieces[i].Outline.Bounds;
            var off = Math.Max(0, Math.Max((box.Left - place.X).Steps, (place.X - box.Right).Steps)) + (double)Math.Max(0, Math.Max((box.Bottom - place.Y).Steps, (place.Y - box.Top).Steps));
            if (off == 0 && !Holds(pieces[i], place)) off = 1;
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
            if (index >= 0 && index < Run.Faces[face].Pieces.Count) break;
            face = (face + by + Run.Faces.Count) % Run.Faces.Count;
            index = by > 0 ? 0 : Run.Faces[face].Pieces.Count - 1;
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
            for (var i = 0; i < Run.Faces[f].Pieces.Count; i++)
            {
                var (otherX, otherY) = Middle((f, i));
                var (on, aside) = right != 0 ? ((otherX - x) * right, Math.Abs(otherY - y)) : ((otherY - y) * up, Math.Abs(otherX - x));
                // What lies more to the side than on is beside another way.
                if (on <= 0 || aside > on || on + (3 * aside) >= least) continue;
                (least, _at) = (on + (3 * aside), (f, i));
            }
        }
    }

    private static bool Holds(Piece piece, Point place) =>
        RingChecks.Locate(piece.Outline, place) != Whereabouts.Outside && piece.Inner.All(hole => RingChecks.Locate(hole, place) != Whereabouts.Inside);

    private Piece Piece((int Face, int Index) at) => Run.Faces[at.Face].Pieces[at.Index];

    private (long X, long Y) Middle((int Face, int Index) at)
    {
        var (face, box) = (Run.Faces[at.Face].Face, Piece(at).Outline.Bounds);
        return (((box.Left + box.Right).Steps / 2) + face.Unrolled.Steps, ((box.Bottom + box.Top).Steps / 2) + face.Raised.Steps);
    }
}
