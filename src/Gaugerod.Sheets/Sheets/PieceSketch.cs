using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A small picture of a piece in its tile, with the sizes that are marked on it. Not to a round scale.</summary>
internal sealed class PieceSketch
{
    private const double Row = 4.2;

    private readonly Pen _pen;
    private readonly Piece _piece;
    private readonly Figures _figures;
    private readonly Frame _tile;
    private readonly double _perStep;
    private int _below, _above, _left, _right;

    private PieceSketch(Pen pen, PieceOnFace of, Frame room, Figures figures)
    {
        var piece = of.Piece;
        (_pen, _piece, _figures) = (pen, piece, figures);
        var (needBelow, needAbove, needLeft, needRight) = Needs(of, figures);
        var (width, height) = (room.Width - ((needLeft + needRight) * Row) - 2, room.Height - ((needBelow + needAbove) * Row) - 2);
        _perStep = Math.Min(width / piece.Cell.Width.Steps, height / piece.Cell.Height.Steps);
        var (w, h) = (piece.Cell.Width.Steps * _perStep, piece.Cell.Height.Steps * _perStep);
        _tile = new(room.X + 1 + (needLeft * Row) + ((width - w) / 2), room.Y + 1 + (needAbove * Row) + ((height - h) / 2), w, h);
    }

    public static void Draw(Pen pen, PieceOnFace of, Frame room, Figures figures)
    {
        var (sketch, piece) = (new PieceSketch(pen, of, room, figures), of.Piece);
        pen.Area(sketch.Ring(piece.Tile), Fill.None, Stroke.Ghost);
        pen.Area(new[] { piece.Upright }.Concat(piece.UprightInner).Select(sketch.Ring), FacePicture.FillOf(piece.Kind), Stroke.CutEdge, piece.Id);
        if (piece.GrainInCell is { } way) GrainArrow.Draw(pen, new[] { piece.Upright }.Concat(piece.UprightInner).Select(sketch.Ring).ToSequence(), way, 12);
        var rounds = RoundCut.Of(piece);
        foreach (var cut in piece.Cuts.Where(cut => !rounds.Any(round => round.Holds(cut)))) sketch.Cut(cut);
        foreach (var at in rounds.SelectMany(round => round.Marked)) sketch.Place(at);
        foreach (var hole in of.Holes.Where(of.Within)) sketch.Hole(hole);
    }

    /// <summary>How high a sketch of a width is, so that nothing is left over above and below.</summary>
    public static double HeightOf(PieceOnFace of, double width, double most, Figures figures)
    {
        var (below, above, left, right) = Needs(of, figures);
        var tile = (width - ((left + right) * Row) - 2) * of.Piece.Cell.Height.Steps / of.Piece.Cell.Width.Steps;
        return Math.Min(most, tile + ((below + above) * Row) + 2);
    }

    /// <summary>How many rows of dimensions each side of the tile needs.</summary>
    private static (int Below, int Above, int Left, int Right) Needs(PieceOnFace of, Figures figures)
    {
        var (piece, rounds) = (of.Piece, RoundCut.Of(of.Piece));
        var places = of.Holes.Count(of.Within) + (3 * rounds.Count);
        var (below, above, left, right) = (places, 0, places, 0);
        foreach (var cut in piece.Cuts.Where(cut => !rounds.Any(round => round.Holds(cut))))
        {
            var (near, far) = Where(cut, figures);
            var level = cut.Away is TileSide.Left or TileSide.Right;
            if (level) (below, above) = (below + near, above + far);
            else (left, right) = (left + near, right + far);
            if (!Between(cut, piece.Cell)) continue;

            // The size of what comes before the cut may have to stand outside, beyond the tile's lower or left end.
            if (level) below += 2;
            else left += 2;
            switch (cut.Away)
            {
                case TileSide.Left: left++; break;
                case TileSide.Right: right++; break;
                case TileSide.Bottom: below++; break;
                default: above++; break;
            }
        }

        return (below, above, left, right);
    }

    /// <summary>Whether the size is written at the near end (foot, left), at the far end (top, right), or, of a taper, at both.</summary>
    private static (int Near, int Far) Where(CutMark cut, Figures figures)
    {
        if (!figures.SameCut(cut.First, cut.Last)) return (1, 1);
        return cut.From <= Length.Zero ? (1, 0) : (0, 1);
    }

    /// <summary>Whether a cut ends short of the tile on both ends, so that its place along the side must be marked too.</summary>
    private static bool Between(CutMark cut, Box cell) =>
        cut.From > Length.Zero && cut.To < (cut.Away is TileSide.Left or TileSide.Right ? cell.Height : cell.Width);

    private Sequence<Spot> Ring(Ring ring) => ring.Points.Select(p => At(p.X - _piece.Cell.Left, p.Y - _piece.Cell.Bottom)).ToSequence();

    private Spot At(Length right, Length up) => new(_tile.X + (right.Steps * _perStep), _tile.Bottom - (up.Steps * _perStep));

    private void Cut(CutMark cut)
    {
        var (near, far) = Where(cut, _figures);
        if (near > 0) Size(cut.Away, cut.First, far: false);
        if (far > 0) Size(cut.Away, cut.Last, far: true);
        if (Between(cut, _piece.Cell)) Place(cut);
    }

    private void Size(TileSide away, Length size, bool far)
    {
        var (words, on) = (_figures.Cut(size), size.Steps * _perStep);
        if (away is TileSide.Left or TileSide.Right)
        {
            var y = far ? _tile.Y - (++_above * Row) + 1.6 : _tile.Bottom + (++_below * Row) - 0.4;
            var (from, to) = away == TileSide.Left ? (_tile.Right - on, _tile.Right) : (_tile.X, _tile.X + on);
            Measures.Level(_pen, from, to, y, words, away == TileSide.Left ? Measures.Spill.Before : Measures.Spill.After, 7.5);
            return;
        }

        var x = far ? _tile.Right + (++_right * Row) - 0.4 : _tile.X - (++_left * Row) + 1.8;
        var (top, bottom) = away == TileSide.Bottom ? (_tile.Y, _tile.Y + on) : (_tile.Bottom - on, _tile.Bottom);
        Measures.Upright(_pen, x, top, bottom, words, away == TileSide.Bottom ? Measures.Spill.Before : Measures.Spill.After, 7.5);
    }

    /// <summary>Where a cut begins and how long it is, along the side it is cut into.</summary>
    private void Place(CutMark cut)
    {
        var (from, to) = (cut.From.Steps * _perStep, cut.To.Steps * _perStep);
        var (begins, runs) = (_figures.Near(cut.From), _figures.Near(cut.To - cut.From));
        if (cut.Away is TileSide.Bottom or TileSide.Top)
        {
            var y = cut.Away == TileSide.Bottom ? _tile.Bottom + (++_below * Row) - 0.4 : _tile.Y - (++_above * Row) + 1.6;
            Measures.Level(_pen, _tile.X, _tile.X + from, y, begins, Measures.Spill.Before, 7.5);
            Measures.Level(_pen, _tile.X + from, _tile.X + to, y, runs, Measures.Spill.After, 7.5);
            return;
        }

        var x = cut.Away == TileSide.Left ? _tile.X - (++_left * Row) + 1.8 : _tile.Right + (++_right * Row) - 0.4;
        Measures.Upright(_pen, x, _tile.Bottom - from, _tile.Bottom, begins, Measures.Spill.Before, 7.5);
        Measures.Upright(_pen, x, _tile.Bottom - to, _tile.Bottom - from, runs, Measures.Spill.After, 7.5);
    }

    private void Hole(Hole hole) => Place(_piece.InCell(hole.Centre));

    /// <summary>Where a place lies, from the tile's left side and from its foot; nothing where it lies on them.</summary>
    private void Place(Point place)
    {
        var at = At(place.X, place.Y);
        var (right, up) = (place.X != Length.Zero, place.Y != Length.Zero);
        if (right) Measures.Level(_pen, _tile.X, at.X, _tile.Bottom + (++_below * Row) - 0.4, _figures.Near(place.X), size: 7.5);
        if (up) Measures.Upright(_pen, _tile.X - (++_left * Row) + 1.8, at.Y, _tile.Bottom, _figures.Near(place.Y), size: 7.5);
        if (right) _pen.Line(at.X, at.Y, at.X, _tile.Bottom, Stroke.Ghost);
        if (up) _pen.Line(at.X, at.Y, _tile.X, at.Y, Stroke.Ghost);
    }
}
