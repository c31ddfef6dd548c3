using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>
/// Where the screws of a piece go. On studs: a row of its own along every side that stands on one, and a row up the middle of every
/// stud between. On a floor: a grid from edge to edge. None where nothing of the piece is, none in a hole.
/// </summary>
internal sealed class BoardScrews(BoardProduct board, Studs? studs, IReadOnlyList<long> middles, IEnumerable<Hole> holes, BoardField field)
{
    private readonly long _apart = board.ScrewsApart.Steps, _inset = board.Inset.Steps;
    private readonly (Point Centre, long Radius)[] _holes = [.. holes.Select(hole => (field.Turned(hole.Centre), hole.Diameter.Steps / 2))];

    /// <summary>The places of a piece's screws, as studs run up.</summary>
    /// <param name="rings">The piece, the area to the left; a hole runs clockwise.</param>
    public List<Point> Of(IReadOnlyList<TaggedCorner[]> rings)
    {
        var places = studs is null ? OnGrid(rings) : OnStuds(rings, studs);
        places.RemoveAll(IsInHole);
        // In a leg narrower than two insets the rows of both its sides would stand in each other's way, or beside the board.
        var apart = new List<Point>();
        foreach (var place in places)
        {
            if (!NearASide(rings, place) && !apart.Exists(other => Squared(place, other) < (double)_inset * _inset)) apart.Add(place);
        }

        return apart;
    }

    private List<Point> OnGrid(IReadOnlyList<TaggedCorner[]> rings)
    {
        var box = Box.Around(rings[0].Select(corner => corner.Point));
        var places = new List<Point>();
        foreach (var x in Spread(box.Left.Steps, box.Right.Steps))
        {
            foreach (var stretch in Chords.Of(rings, plumb: true, x, long.MinValue, long.MaxValue)) Up(x, stretch, places);
        }

        return places;
    }

    private List<Point> OnStuds(IReadOnlyList<TaggedCorner[]> rings, Studs on)
    {
        var (places, sides) = (new List<Point>(), Steep(rings));
        foreach (var (from, to) in sides) Beside(from, to, places);
        var half = on.Width.Steps / 2;
        foreach (var x in middles)
        {
            foreach (var stretch in Chords.Of(rings, plumb: true, x, long.MinValue, long.MaxValue))
            {
                // A side that stands on this stud has its own row there.
                foreach (var left in Without(stretch, sides.Where(side => Math.Abs(side.From.X.Steps - x) <= half && Math.Abs(side.To.X.Steps - x) <= half))) Up(x, left, places);
            }
        }

        return places;
    }

    private void Up(long x, Stretch stretch, List<Point> places)
    {
        if (stretch.Length > _inset) places.AddRange(Spread(stretch.From, stretch.To).Select(y => Point.FromSteps(x, y)));
    }

    /// <summary>The sides that stand more than they lie, longer than the inset.</summary>
    private List<(Point From, Point To)> Steep(IReadOnlyList<TaggedCorner[]> rings)
    {
        var steep = new List<(Point From, Point To)>();
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]);
                if (Math.Abs(b.Y - a.Y) > Math.Max(_inset, 4 * Math.Abs(b.X - a.X))) steep.Add((a.Point, b.Point));
            }
        }

        return steep;
    }

    /// <summary>A row along a side, the inset into the piece.</summary>
    private void Beside(Point from, Point to, List<Point> places)
    {
        var (low, high) = from.Y < to.Y ? (from, to) : (to, from);
        // Run upwards the piece lies to the left, downwards to the right.
        var aside = from.Y < to.Y ? -_inset : _inset;
        foreach (var y in Spread(low.Y.Steps, high.Y.Steps))
        {
            var x = low.X.Steps + (long)((Int128)(high.X.Steps - low.X.Steps) * (y - low.Y.Steps) / (high.Y.Steps - low.Y.Steps));
            places.Add(Point.FromSteps(x + aside, y));
        }
    }

    /// <summary>Places evenly from one inset to the other; one in the middle where there is no room for two.</summary>
    private IEnumerable<long> Spread(long from, long to)
    {
        var (first, room) = (from + _inset, to - from - (2 * _inset));
        if (room <= 0) return [from + ((to - from) / 2)];
        var gaps = (int)((room + _apart - 1) / _apart);
        return Enumerable.Range(0, gaps + 1).Select(i => first + (room * i / gaps));
    }

    private static List<Stretch> Without(Stretch whole, IEnumerable<(Point From, Point To)> sides)
    {
        var left = new List<Stretch> { whole };
        foreach (var (from, to) in sides)
        {
            var (low, high) = (Math.Min(from.Y.Steps, to.Y.Steps), Math.Max(from.Y.Steps, to.Y.Steps));
            left = [.. left.SelectMany(stretch => new[] { new Stretch(stretch.From, Math.Min(stretch.To, low)), new Stretch(Math.Max(stretch.From, high), stretch.To) }).Where(stretch => stretch.Length > 0)];
        }

        return left;
    }

    /// <summary>Whether a place lies outside, or nearer to a side than half the inset.</summary>
    private bool NearASide(IReadOnlyList<TaggedCorner[]> rings, Point place)
    {
        var (least, inside) = ((double)_inset * _inset / 4, false);
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i].Point, ring[i + 1 == ring.Length ? 0 : i + 1].Point);
                var along = Math.Clamp((double)Segments.Dot(a, b, a, place) / (double)Segments.Dot(a, b, a, b), 0, 1);
                var (x, y) = ((place.X - a.X).Steps - (along * (b.X - a.X).Steps), (place.Y - a.Y).Steps - (along * (b.Y - a.Y).Steps));
                if ((x * x) + (y * y) < least) return true;
                if (a.Y > place.Y != b.Y > place.Y && (Segments.Turn(a, b, place) > 0) == (b.Y > a.Y)) inside = !inside;
            }
        }

        return !inside;
    }

    private static double Squared(Point one, Point other) => (double)Segments.Dot(one, other, one, other);

    private bool IsInHole(Point place) => Array.Exists(_holes, hole =>
    {
        var (x, y) = ((Int128)(place.X - hole.Centre.X).Steps, (Int128)(place.Y - hole.Centre.Y).Steps);
        return (x * x) + (y * y) <= (Int128)hole.Radius * hole.Radius;
    });
}
