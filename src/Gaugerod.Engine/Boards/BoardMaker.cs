using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>Makes the pieces, seams and screws of a face out of a layout of its sheets.</summary>
internal static class BoardMaker
{
    /// <summary>The face with its sheets.</summary>
    /// <param name="task">The face.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="before">How many pieces other faces have before it.</param>
    public static BoardedFace Made(BoardTask task, SheetLayout layout, int before)
    {
        var (field, sheet, studs) = (task.Field, task.Sheet(layout.Lay), task.Middles);
        var screws = new BoardScrews(task.Product, task.Request.Studs, studs, task.Face.Face.Holes, field);
        var (pieces, seams) = (new List<BoardPiece>(), new List<BoardSeam>());
        Band[] bands = [.. layout.Rows.Select(row => row.Band)];
        for (var r = 0; r < layout.Rows.Length; r++)
        {
            var row = layout.Rows[r];
            foreach (var (from, to) in BoardPlanner.Cells(layout, r))
            {
                var rings = row.Rings(from, to);
                foreach (var outline in BoardPlanner.Outlines(rings).OrderBy(ring => ring.Min(corner => (corner.X, corner.Y))))
                {
                    var number = string.Create(CultureInfo.InvariantCulture, $"b{before + pieces.Count + 1}");
                    pieces.Add(Piece(number, r + 1, [outline, .. rings.Where(ring => !SheetRow.IsOutline(ring) && Holds(outline, ring))]));
                }
            }

            foreach (var place in layout.Choice.Rows[r]) seams.AddRange(row.Seam(place).Select(stretch => Seam(layout.At[place], stretch, isPlumb: true)));
            var (height, above) = BoardPlanner.Above(field, bands, r, sheet);
            seams.AddRange(above.Select(stretch => Seam(height, stretch, isPlumb: false)));
        }

        var cost = layout.Choice.Cost;
        var niches = NicheMaker.Of(task, before + pieces.Count).ToSequence();
        return new(task.Face.Face.Name, task.Request, task.Product, layout.Lay, [.. studs.Select(Length.FromSteps)], pieces.ToSequence(), seams.ToSequence())
        {
            Outline = task.Face.Outline.Ring,
            Openings = task.Face.Openings.Select(opening => new NamedRing(opening.Name, opening.Ring)).ToSequence(),
            Holes = task.Face.Face.Holes,
            Niches = niches,
            Area = (pieces.Sum(piece => (double)piece.Shape.DoubledArea / 2) + niches.SelectMany(niche => niche.Pieces).Sum(piece => (double)piece.Along.Steps * piece.Across.Steps)) / Length.StepsPerMillimetre / Length.StepsPerMillimetre,
            Corners = Corners(task.Face).Aggregate(Length.Zero, (sum, corner) => sum + corner.Length),
            AtCorners = cost.AtCorners,
            InLine = cost.InLine,
            Narrow = cost.Narrow,
            Under = Length.FromSteps(cost.Under),
            IsBest = layout.Choice.IsBest,
        };

        BoardPiece Piece(string id, int row, List<TaggedCorner[]> rings)
        {
            var box = Box.Around(rings[0].Select(corner => corner.Point));
            var (along, across) = layout.Lay == BoardLay.Across ? (box.Width, box.Height) : (box.Height, box.Width);
            return new(id, row, new(field.OnFace(rings[0]), rings.Skip(1).Select(field.OnFace).ToSequence()), along, across, screws.Of(rings).Select(field.Turned).ToSequence())
            {
                IsWhole = rings.Count == 1 && rings[0].Length == 4 && along == task.Product.Length && across == task.Product.Width,
            };
        }

        BoardSeam Seam(long at, Stretch stretch, bool isPlumb)
        {
            var (from, to) = isPlumb ? (Point.FromSteps(at, stretch.From), Point.FromSteps(at, stretch.To)) : (Point.FromSteps(stretch.From, at), Point.FromSteps(stretch.To, at));
            return new(field.Turned(from), field.Turned(to), isPlumb && task.Request.Studs is not null);
        }
    }

    /// <summary>The inside corners of a face, each with its length.</summary>
    public static IEnumerable<(string Name, Length Length)> Corners(DrawnFace face)
    {
        for (var i = 0; i < face.Outline.Sides.Count; i++)
        {
            if (face.Outline.Sides[i] is { Edge.Kind: EdgeKind.InsideCorner } side) yield return (side.Name, Length.FromSteps(SideOf(face.Outline.Ring, i)));
        }
    }

    private static bool Holds(TaggedCorner[] outline, TaggedCorner[] hole) =>
        RingChecks.Locate(new(outline.Select(corner => corner.Point).ToSequence()), hole[0].Point) != Whereabouts.Outside;

    private static long SideOf(Ring ring, int i)
    {
        var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
        return (long)Math.Round(Math.Sqrt((double)Segments.Dot(a, b, a, b)));
    }
}
