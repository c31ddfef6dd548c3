using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>
/// Whether any tile gives a piece whose side shows in the open. Sides at joints and sides that show must be the tile's own, a side
/// that goes under something may be sawn; two across from each other are both the tile's own only a whole tile apart.
/// </summary>
internal static class OpenSides
{
    /// <summary>0.1 mm: as little as a stone takes off.</summary>
    internal static readonly Length Nothing = Length.FromSteps(Length.StepsPerMillimetre / 10);

    /// <summary>The sides of its tile at which a piece is cut along an edge that shows.</summary>
    internal static IEnumerable<CutMark> Sawn(Piece piece, Func<string, bool> shows) =>
        piece.Cuts.Where(cut => shows(cut.Faces) && Whole(piece, cut.Away) - cut.Least > Nothing);

    /// <summary>How far it is across the tile from a side of it.</summary>
    internal static Length Whole(Piece piece, TileSide side) => side is TileSide.Left or TileSide.Right ? piece.Cell.Width : piece.Cell.Height;

    /// <summary>How a piece stands to a side of its tile, for <see cref="Gives"/>.</summary>
    /// <param name="Own">Whether that side must be the tile's own.</param>
    /// <param name="Shows">Whether it does since it shows.</param>
    internal readonly record struct Need(bool Own, bool Shows);

    /// <summary>What a piece with four square sides needs of its tile's sides; null for any other piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="face">The face it is on.</param>
    /// <param name="joint">The joint between tiles: one that falls on an edge leaves the tile's side so far from it.</param>
    /// <param name="shows">Whether a side along an edge shows, by the edge's name.</param>
    internal static Need[]? Needs(Piece piece, FinishedFace face, Length joint, Func<string, bool> shows)
    {
        var points = piece.Outline.Points;
        if (!piece.OfRectangle || points.Count != 4) return null;
        var needs = new Need[4];
        for (var i = 0; i < 4; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % 4]);
            var (from, to) = (piece.InCell(a), piece.InCell(b));
            var (run, rise) = (to.X - from.X, to.Y - from.Y);
            if (Length.Min(run.Abs(), rise.Abs()) > Nothing) return null;

            // The piece lies to the left of its outline.
            var side = rise.Abs() > run.Abs() ? (rise.IsNegative ? TileSide.Left : TileSide.Right) : run.IsNegative ? TileSide.Top : TileSide.Bottom;
            var edges = face.Edges.Where(edge => Lies(edge, a, joint + Nothing) && Lies(edge, b, joint + Nothing)).ToList();
            var open = edges.Exists(edge => shows(edge.Name));
            needs[(int)side] = new(open || edges.Count == 0, open);
        }

        return needs;
    }

    /// <summary>Whether a tile gives a piece with these needs, so large.</summary>
    internal static bool Gives(Need[] needs, Piece piece)
    {
        var box = piece.Upright.Bounds;
        return Fits(TileSide.Left, TileSide.Right, piece.Cell.Width - box.Width) && Fits(TileSide.Bottom, TileSide.Top, piece.Cell.Height - box.Height);

        bool Fits(TileSide one, TileSide other, Length taken) => !needs[(int)one].Own || !needs[(int)other].Own || taken <= Nothing;
    }

    private static bool Lies(FieldEdge edge, Point point, Length reach)
    {
        var (dx, dy) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        var (x, y) = ((double)(point.X - edge.From.X).Steps, (double)(point.Y - edge.From.Y).Steps);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length == 0) return false;
        var along = ((x * dx) + (y * dy)) / length;
        return Math.Abs((x * dy) - (y * dx)) / length <= reach.Steps && along >= -reach.Steps && along <= length + reach.Steps;
    }
}
