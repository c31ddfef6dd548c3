using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Lines;

/// <summary>Pieces of one kind on a face, as one path.</summary>
/// <param name="Kind">The kind in one word.</param>
/// <param name="Path">Their outlines.</param>
internal sealed record KindDrawn(string Kind, string Path);

/// <summary>An edge that may be tapped.</summary>
/// <param name="Name">Its name, as wants call it.</param>
/// <param name="Path">Its line.</param>
internal sealed record EdgeDrawn(string Name, string Path);

/// <summary>A face as the station draws it: every part one path, so that a whole run is a few dozen shapes.</summary>
/// <param name="Name">The face's name.</param>
/// <param name="Wall">The bare wall.</param>
/// <param name="Field">What tile covers.</param>
/// <param name="Fixtures">What stands at the foot or hangs at the head.</param>
/// <param name="Openings">Openings and holes.</param>
/// <param name="Lattice">Every tile that may come into sight while the tiling slides.</param>
/// <param name="Kinds">The true pieces by kind.</param>
/// <param name="Lines">The lines to snap.</param>
/// <param name="Edges">The edges.</param>
internal sealed record FaceDrawn(
    string Name, string Wall, string Field, string Fixtures, string Openings, string Lattice, IReadOnlyList<KindDrawn> Kinds, string Lines, IReadOnlyList<EdgeDrawn> Edges)
{
    public static FaceDrawn Of(RunPlan run, RodSlide slide, int face, Func<Ink> ink)
    {
        var plan = run.Faces[face];
        var finished = slide.Faces[face];
        var openings = ink().Rings(plan.Face.Openings.Select(opening => opening.Ring));
        foreach (var hole in plan.Face.Holes) openings.Circle(hole.Centre, hole.Diameter);
        return new(
            finished.Name,
            ink().Ring(finished.Outline).ToString(),
            ink().Polygon(finished.Field).ToString(),
            Standing(finished, ink()),
            openings.ToString(),
            ink().Boxes(slide.Lattice(run.Best.Faces, face)).ToString(),
            [.. plan.Pieces.GroupBy(piece => piece.Kind).OrderBy(kind => kind.Key)
                .Select(kind => new KindDrawn(PieceWords.Of(kind.Key), ink().Rings(kind.SelectMany(Rings)).ToString()))],
            Snapped(run, finished, ink()),
            [.. finished.Edges.GroupBy(edge => edge.Name, StringComparer.Ordinal)
                .Select(edge => new EdgeDrawn(edge.Key, edge.Aggregate(ink(), (path, part) => path.Line(part.From, part.To)).ToString()))]);
    }

    /// <summary>From a fixture's level edge to the lowest or the highest of the face.</summary>
    private static string Standing(FinishedFace face, Ink ink)
    {
        var box = face.Outline.Bounds;
        foreach (var edge in face.Edges.Where(edge => edge.Kind == EdgeKind.Fixture && edge.From.X != edge.To.X && face.Field.Outer.Points.Contains(edge.From)))
        {
            var rest = edge.To.X > edge.From.X ? box.Bottom : box.Top;
            ink.Ring(new([edge.From, edge.To, new(edge.To.X, rest), new(edge.From.X, rest)]));
        }

        return ink.ToString();
    }

    private static IEnumerable<Ring> Rings(Piece piece) => piece.Inner.Prepend(piece.Outline);

    private static string Snapped(RunPlan run, FinishedFace face, Ink ink)
    {
        var box = face.Outline.Bounds;
        foreach (var line in run.Lines.Where(line => string.Equals(line.Face, face.Name, StringComparison.Ordinal)))
        {
            if (line.Axis == Axis.Level) ink.Line(new(box.Left, line.At), new(box.Right, line.At));
            else ink.Line(new(line.At, box.Bottom), new(line.At, box.Top));
        }

        return ink.ToString();
    }
}
