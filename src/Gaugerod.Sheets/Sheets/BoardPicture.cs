using Gaugerod.Engine.Boards;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A face with its sheets: studs dashed behind them, a dot for each screw, each piece with its number and what to cut it to.</summary>
internal sealed class BoardPicture(BoardedFace face, Figures figures)
{
    /// <summary>What figures take at the left of the picture and under it.</summary>
    public const double Left = 15, Under = 11;

    private const double Screw = 0.55;

    private readonly List<Frame> _taken = [];

    /// <summary>How many pieces are too small for their number.</summary>
    public int Bare { get; private set; }

    public void Draw(Pen pen, FaceMap map)
    {
        pen.Area(map.Ring(face.Outline), Fill.Wall, Stroke.Outline, face.Face);
        foreach (var piece in face.Pieces) pen.Area(piece.Shape.Inner.Select(map.Ring).Prepend(map.Ring(piece.Shape.Outer)), Fill.Full, Stroke.Outline, piece.Id);
        Studs(pen, map);
        foreach (var opening in face.Openings) pen.Area(map.Ring(opening.Ring), Fill.Opening, Stroke.FixtureEdge, opening.Name);
        foreach (var hole in face.Holes) pen.Area(Pen.Circle(map.At(hole.Centre), map.Across(hole.Diameter) / 2), Fill.Opening, Stroke.FixtureEdge, hole.Name);
        foreach (var at in face.Pieces.SelectMany(piece => piece.Screws).Select(map.At)) pen.Area(new Frame(at.X - (Screw / 2), at.Y - (Screw / 2), Screw, Screw), Fill.Ink);
        foreach (var piece in face.Pieces) Name(pen, map, piece);
        foreach (var opening in face.Openings) Name(pen, map.Ring(opening.Ring), opening.Name);
        Places(pen, map);
    }

    private bool RunLevel => face.Request.Studs?.RunLevel ?? false;

    private void Studs(Pen pen, FaceMap map)
    {
        var box = face.Outline.Bounds;
        foreach (var stud in face.Studs)
        {
            if (RunLevel) pen.Line(map.At(new(box.Left, stud)), map.At(new(box.Right, stud)), Stroke.Ghost);
            else pen.Line(map.At(new(stud, box.Bottom)), map.At(new(stud, box.Top)), Stroke.Ghost);
        }
    }

    /// <summary>Where studs stand and level seams run, at the picture's edge; a figure that would cover another is left out.</summary>
    private void Places(Pen pen, FaceMap map)
    {
        var box = Frame.Around(map.Ring(face.Outline));
        var level = face.Seams.Where(seam => seam.From.Y == seam.To.Y).Select(seam => seam.From.Y);
        var plumb = face.Seams.Where(seam => seam.From.X == seam.To.X).Select(seam => seam.From.X);
        foreach (var at in (RunLevel ? plumb : face.Studs).Distinct().Order())
        {
            var x = map.At(new(at, Length.Zero)).X;
            pen.Line(x, box.Bottom, x, box.Bottom + 2, Stroke.Dimension);
            Figure(pen, new(x, box.Bottom + 4.2), figures.Near(at));
        }

        foreach (var at in (RunLevel ? face.Studs : level).Distinct().Order())
        {
            var y = map.At(new(Length.Zero, at)).Y;
            pen.Line(box.X - 2, y, box.X, y, Stroke.Dimension);
            Figure(pen, new(box.X - 3 - (Lettering.Width(Fractions.Set(figures.Near(at)), 8) / 2), y), figures.Near(at));
        }
    }

    private void Figure(Pen pen, Spot at, string words)
    {
        var box = Pen.BoxAround(at, words, 8, bold: false, upright: false);
        if (_taken.Exists(box.Meets)) return;
        _taken.Add(box);
        pen.TextAround(at, words, 8);
    }

    private void Name(Pen pen, FaceMap map, BoardPiece piece)
    {
        var rings = piece.Shape.Inner.Select(map.Ring).Prepend(map.Ring(piece.Shape.Outer)).ToSequence();
        var box = piece.Shape.Outer.Bounds;
        var size = piece.IsWhole ? "whole" : $"{figures.Cut(box.Width)} × {figures.Cut(box.Height)}";
        var (screws, pipes) = (piece.Screws.Select(map.At).ToList(), face.Holes.Select(hole => Frame.Around(Pen.Circle(map.At(hole.Centre), map.Across(hole.Diameter) / 2)).Grown(0.5)).ToList());
        bool Covers(Spot at, bool upright, double wide, double high)
        {
            var (w, h) = upright ? (high, wide) : (wide, high);
            var room = new Frame(at.X - (w / 2), at.Y - (h / 2), w, h).Grown(Screw);
            return screws.Exists(screw => screw.X > room.X && screw.X < room.Right && screw.Y > room.Y && screw.Y < room.Bottom);
        }

        foreach (var (number, below) in new[] { (10.0, 8.0), (8, 7), (7, 0) })
        {
            foreach (var upright in new[] { false, true })
            {
                var (wide, high) = (Math.Max(Lettering.Width(piece.Id, number, bold: true), below > 0 ? Lettering.Width(Fractions.Set(size), below) : 0) + 1, Lettering.Cap(number) + (below > 0 ? Lettering.Cap(below) + 1.4 : 0) + 1);
                // Clear of screws where there is room for that, of pipes always.
                foreach (var at in PieceNumbers.Candidates(rings).OrderBy(at => Covers(at, upright, wide, high) ? 1 : 0))
                {
                    var (w, h) = upright ? (high, wide) : (wide, high);
                    var room = new Frame(at.X - (w / 2), at.Y - (h / 2), w, h);
                    if (!Region.Holds(rings, room) || pipes.Exists(room.Meets)) continue;
                    pen.Area(room, Fill.Paper);
                    var off = below > 0 ? (Lettering.Cap(below) + 1.4) / 2 : 0;
                    pen.TextAround(upright ? at with { X = at.X - off } : at with { Y = at.Y - off }, piece.Id, number, bold: true, upright);
                    var under = (Lettering.Cap(number) + 1.4) / 2;
                    if (below > 0) pen.TextAround(upright ? at with { X = at.X + under } : at with { Y = at.Y + under }, size, below, upright: upright);
                    return;
                }
            }
        }

        Bare++;
    }

    private static void Name(Pen pen, Sequence<Spot> ring, string name)
    {
        var middle = Frame.Around(ring).Middle;
        if (Region.Holds([ring], Pen.BoxAround(middle, name, 8, bold: false, upright: false))) pen.TextAround(middle, name, 8, ink: Ink.Quiet);
    }
}
