using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Lines;

/// <summary>Pieces of one kind on a face, as one path.</summary>
/// <param name="Kind">The kind in one word.</param>
/// <param name="Path">Their outlines.</param>
internal sealed record KindDrawn(string Kind, string Path);

/// <summary>An edge that may be tapped.</summary>
/// <param name="Name">Its name, as wants call it.</param>
/// <param name="Path">Its line.</param>
internal sealed record EdgeDrawn(string Name, string Path);

/// <summary>A name written where it has room.</summary>
/// <param name="Text">The name.</param>
/// <param name="Across">The middle of its room.</param>
/// <param name="Down">The middle of its room.</param>
/// <param name="Wide">How wide its room is.</param>
/// <param name="High">How high.</param>
internal sealed record NameDrawn(string Text, long Across, long Down, long Wide, long High);

/// <summary>A face as the station draws it: every part one path, so that a whole run is a few dozen shapes.</summary>
/// <param name="Name">The face's name.</param>
/// <param name="Wall">The bare wall.</param>
/// <param name="IsOver">Whether an earlier part of the run lies on the same wall.</param>
/// <param name="Others">The tiles that other runs lay on it; only with the first part of the wall.</param>
/// <param name="Field">What tile covers.</param>
/// <param name="Fixtures">What stands at the foot or hangs at the head.</param>
/// <param name="Openings">Openings and holes.</param>
/// <param name="Crosses">The crosses that mark openings of four sides.</param>
/// <param name="Trims">The wall's trims where they sit, by what is to be done with them; only with the first part of the wall.</param>
/// <param name="Names">The names of fixtures and openings.</param>
/// <param name="TrimNames">The numbers of pieces of trim.</param>
/// <param name="Lattice">Every tile that may come into sight while the tiling slides.</param>
/// <param name="Kinds">The true pieces by kind.</param>
/// <param name="Lines">The lines to snap.</param>
/// <param name="Edges">The edges.</param>
/// <param name="Holes">The holes that lie on its tile, each to be tapped as an edge is.</param>
internal sealed record FaceDrawn(
    string Name, string Wall, bool IsOver, string Others, string Field, string Fixtures, string Openings, string Crosses, IReadOnlyList<KindDrawn> Trims, IReadOnlyList<NameDrawn> Names, IReadOnlyList<NameDrawn> TrimNames, string Lattice, IReadOnlyList<KindDrawn> Kinds, string Lines, IReadOnlyList<EdgeDrawn> Edges, IReadOnlyList<EdgeDrawn> Holes)
{
    public static FaceDrawn Of(RunPlan run, IEnumerable<FacePlan> others, IReadOnlyList<TrimPart> trims, RodSlide slide, int face, Func<Ink> ink)
    {
        var plan = run.Faces[face];
        var finished = slide.Faces[face];
        var openings = ink().Rings(plan.Face.Openings.Select(opening => opening.Ring));
        foreach (var hole in plan.Face.Holes) openings.Circle(hole.Centre, hole.Diameter);
        var over = slide.Faces.Take(face).Any(before => before.Outline == finished.Outline && string.Equals(before.Wall, finished.Wall, StringComparison.Ordinal));
        var stands = Standing(finished).ToList();
        return new(
            finished.Name,
            ink().Ring(finished.Outline).ToString(),
            over,
            over ? "" : ink().Rings(others.Where(other => string.Equals(other.Face.Wall, finished.Wall, StringComparison.Ordinal)).SelectMany(other => other.Pieces).SelectMany(Rings)).ToString(),
            ink().Polygon(finished.Field).ToString(),
            ink().Rings(stands.Select(one => one.Ring)).ToString(),
            openings.ToString(),
            plan.Face.Openings.Where(opening => opening.Ring.Points.Count == 4)
                .Aggregate(ink(), (path, opening) => path.Line(opening.Ring.Points[0], opening.Ring.Points[2]).Line(opening.Ring.Points[1], opening.Ring.Points[3])).ToString(),
            [.. trims.GroupBy(KindOf, StringComparer.Ordinal).Select(kind => new KindDrawn(kind.Key, ink().Rings(kind.Select(part => part.Outline)).ToString()))],
            [.. stands.Concat(plan.Face.Openings).Select(one => Named(one, ink()))],
            [.. trims.Select(part => Named(new(part.Id, part.Outline), ink()))],
            ink().Rings(slide.Lattice(run.Best.Faces, face)).ToString(),
            [.. plan.Pieces.GroupBy(piece => piece.Kind).OrderBy(kind => kind.Key)
                .Select(kind => new KindDrawn(PieceWords.Of(kind.Key), ink().Rings(kind.SelectMany(Rings)).ToString()))],
            // Lines go over all planes of a folded floor: they are drawn once, with the last of them, so that no tile hides them.
            slide.Faces.Skip(face + 1).Any(later => string.Equals(later.SetOut.Name, finished.SetOut.Name, StringComparison.Ordinal)) ? "" : Snapped(run, finished.SetOut, ink()),
            [.. finished.Edges.GroupBy(edge => edge.Name, StringComparer.Ordinal)
                .Select(edge => new EdgeDrawn(edge.Key, edge.Aggregate(ink(), (path, part) => path.Line(part.From, part.To)).ToString()))],
            [.. finished.Holes.Where(hole => Reaches(hole, finished)).Select(hole => new EdgeDrawn(hole.Name, ink().Circle(hole.Centre, hole.Diameter).ToString()))]);
    }

    /// <summary>
    /// The lowest of a face with what stands at its foot. Where a fixture takes the whole foot, the face as measured ends at
    /// the fixture; its y = 0 is the floor.
    /// </summary>
    public static Length Foot(FinishedFace face)
    {
        var lowest = face.Outline.Bounds.Bottom;
        return Level(face).Any(edge => edge.To.X > edge.From.X) ? Length.Min(lowest, Length.Zero) : lowest;
    }

    /// <summary>From a fixture's level edge to the floor, or to the highest of the face.</summary>
    public static IEnumerable<NamedRing> Standing(FinishedFace face)
    {
        foreach (var edge in Level(face))
        {
            var rest = edge.To.X > edge.From.X ? Foot(face) : face.Outline.Bounds.Top;
            yield return new(edge.Name, new([edge.From, edge.To, new(edge.To.X, rest), new(edge.From.X, rest)]));
        }
    }

    /// <summary>Whether a hole's middle lies on a face's tile, or a plane of a fold begins at it.</summary>
    private static bool Reaches(Hole hole, FinishedFace face)
    {
        var (at, inside) = (hole.Centre, false);
        foreach (var ring in face.Field.Inner.Prepend(face.Field.Outer))
        {
            for (var i = 0; i < ring.Points.Count; i++)
            {
                var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
                if ((a.Y > at.Y) == (b.Y > at.Y)) continue;
                inside ^= Segments.Turn(a, b, at) > 0 == b.Y > a.Y;
            }
        }

        return inside || (face.Plane is not null && face.Outline.Points.Contains(at));
    }

    private static IEnumerable<FieldEdge> Level(FinishedFace face) =>
        face.Edges.Where(edge => edge.Kind == EdgeKind.Fixture && edge.From.X != edge.To.X && face.Field.Outer.Points.Contains(edge.From));

    private static string KindOf(TrimPart part) => part.Return is not null ? "return" : part.Corner is not null ? "corner" : part.IsCut ? "cut" : "whole";

    private static NameDrawn Named(NamedRing one, Ink ink)
    {
        var box = one.Ring.Bounds;
        return new(one.Name, (ink.X(box.Left) + ink.X(box.Right)) / 2, (ink.Y(box.Bottom) + ink.Y(box.Top)) / 2, Ink.Units(box.Width), Ink.Units(box.Height));
    }

    private static IEnumerable<Ring> Rings(Piece piece) => piece.Inner.Prepend(piece.Outline);

    private static string Snapped(RunPlan run, FinishedFace face, Ink ink)
    {
        var box = run.IsBorder ? face.Field.Outer.Bounds : face.Outline.Bounds;
        foreach (var line in run.Lines.Where(line => string.Equals(line.Face, face.Name, StringComparison.Ordinal)))
        {
            if (line.Axis == Axis.Level) ink.Line(new(box.Left, line.At), new(box.Right, line.At));
            else ink.Line(new(line.At, box.Bottom), new(line.At, box.Top));
        }

        return ink.ToString();
    }
}
