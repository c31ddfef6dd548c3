using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>One strip of a border: its field, and how far it is turned from level.</summary>
internal sealed record BorderStrip(FinishedFace Face, Angle Turn);

/// <summary>A border's strips, and the ring inside it from which the rest of the field begins.</summary>
internal sealed record BorderFrame(Sequence<BorderStrip> Strips, Ring Inside)
{
    /// <summary>The least that is worth calling a field, as it is the least side of a tile.</summary>
    private static readonly Length s_least = Product.LeastSide;

    /// <summary>Lays a frame along the outer ring of a field; null when it is wider than the field has room for, or has no width beside its joint.</summary>
    /// <param name="field">The field; its sides are straight.</param>
    /// <param name="border">The border.</param>
    /// <param name="half">Half the joint beside it.</param>
    public static BorderFrame? Of(FinishedFace field, Zone.Border border, Length half)
    {
        var (ring, drawn) = (field.Field.Outer, Drawn(field, border));
        if (border.Width <= half || Moved(drawn, border.Width - half) is not { } inner || Moved(drawn, border.Width + half) is not { } inside) return null;
        if (Moved(drawn, border.Width + half + Grid.HalfDown(s_least)) is null || !field.Field.Inner.All(hole => RingChecks.LiesInside(hole, inside))) return null;
        var strips = new List<BorderStrip>();
        for (var i = 0; i < ring.Points.Count; i++)
        {
            if (Strip(field, border, ring, inner, i, half) is not { } strip) return null;
            strips.Add(strip);
        }

        return new(strips.ToSequence(), inside);
    }

    /// <summary>A corner of the hole in the field that a border reaches, where that is why there is no frame.</summary>
    public static Point? HoleInTheWay(FinishedFace field, Zone.Border border, Length half)
    {
        if (border.Width <= half || Moved(Drawn(field, border), border.Width + half) is not { } inside) return null;
        return field.Field.Inner.FirstOrDefault(hole => !RingChecks.LiesInside(hole, inside))?.Points[0];
    }

    private static DrawnRing Drawn(FinishedFace field, Zone.Border border)
    {
        var ring = field.Field.Outer;
        var sides = Enumerable.Range(0, ring.Points.Count).Select(i => new Side(new(NameOf(field, ring, i), EdgeKind.Zone), NameOf(field, ring, i), Hand.Neither, "")).ToSequence();
        return new(border.Name, "", ring, sides);
    }

    private static BorderStrip? Strip(FinishedFace field, Zone.Border border, Ring outer, Ring inner, int i, Length half)
    {
        var n = outer.Points.Count;
        Point Outer(int k) => outer.Points[(k + n) % n];
        Point Inner(int k) => inner.Points[(k + n) % n];
        var (along, across) = (new Line(Outer(i), Outer(i + 1)), new Line(Inner(i), Inner(i + 1)));
        var (butts, runs) = (!border.Mitred && Turns(i), !border.Mitred && Turns(i + 1));
        // It begins on the mitre, or where the strip before it ends inside; it ends on the mitre, or runs to the outer edge.
        var begins = (butts ? new Line(Inner(i), Inner(i - 1)) : new Line(Outer(i), Inner(i))).Moved(half.Steps * (butts ? 2 : 1), towards: Outer(i + 1));
        var ends = runs ? new Line(Outer(i + 1), Outer(i + 2)) : new Line(Outer(i + 1), Inner(i + 1)).Moved(half.Steps, towards: Outer(i));
        Point[] corners = [along.Crossing(begins), along.Crossing(ends), across.Crossing(ends), across.Crossing(begins)];
        if (Segments.Dot(corners[0], corners[1], Outer(i), Outer(i + 1)) <= 0 || Segments.Dot(corners[3], corners[2], Outer(i), Outer(i + 1)) <= 0) return null;
        string Named(int k) => $"{border.Name} {NameOf(field, outer, (k + n) % n)}";
        var name = Named(i);
        FieldEdge[] edges =
        [
            EdgeOf(field, outer, i) with { From = corners[0], To = corners[1] }, Meets(corners[1], corners[2], Named(i + 1)),
            Meets(corners[2], corners[3], field.Name), Meets(corners[3], corners[0], Named(i - 1)),
        ];
        var face = field with { Name = name, Field = new(new(Sequence.Of<Point>(corners)), []), Edges = Sequence.Of<FieldEdge>(edges) };
        return new(face, along.Turn());

        bool Turns(int k) => Segments.Turn(Outer(k - 1), Outer(k), Outer(k + 1)) > 0;

        static FieldEdge Meets(Point from, Point to, string what) => new(from, to, what, EdgeKind.Zone);
    }

    /// <summary>The ring moved inwards; null when it comes to nothing or loses a side.</summary>
    private static Ring? Moved(DrawnRing drawn, Length inward)
    {
        // What is said of it here is said again by the border, in its own words.
        var moved = EdgeMoves.Move(drawn, tileInside: true, _ => new Take(inward, Length.Zero), new Remarks(Tape.Millimetres));
        return moved is null || moved.Count != drawn.Ring.Points.Count ? null : new(moved.Select(side => side.From).ToSequence());
    }

    private static string NameOf(FinishedFace field, Ring ring, int i) => EdgeOf(field, ring, i).Name;

    /// <summary>The name of three sides or more that follow one another: chords of an arc. Null where there are none.</summary>
    public static string? ArcOf(FinishedFace field)
    {
        var ring = field.Field.Outer;
        var names = Enumerable.Range(0, ring.Points.Count).Select(i => NameOf(field, ring, i)).ToList();
        return names.Where((name, i) => string.Equals(name, names[(i + 1) % names.Count], StringComparison.Ordinal) && string.Equals(name, names[(i + 2) % names.Count], StringComparison.Ordinal)).FirstOrDefault();
    }

    /// <summary>The edge of the field that begins at a corner of its outer ring.</summary>
    private static FieldEdge EdgeOf(FinishedFace field, Ring ring, int i) => field.Edges.First(edge => edge.From == ring.Points[i]);

    /// <summary>A straight line through two places, reckoned in doubles: the one place where a border's corners leave the grid and come back to it.</summary>
    private readonly record struct Line(double X, double Y, double RunX, double RunY)
    {
        public Line(Point from, Point to)
            : this(from.X.Steps, from.Y.Steps, to.X.Steps - from.X.Steps, to.Y.Steps - from.Y.Steps)
        {
        }

        /// <summary>The line moved square to itself, towards a place.</summary>
        public Line Moved(long by, Point towards)
        {
            var length = Math.Sqrt((RunX * RunX) + (RunY * RunY));
            var side = (RunX * (towards.Y.Steps - Y)) - (RunY * (towards.X.Steps - X)) > 0 ? by : -by;
            return this with { X = X - (RunY / length * side), Y = Y + (RunX / length * side) };
        }

        public Point Crossing(Line other)
        {
            var across = (RunX * other.RunY) - (RunY * other.RunX);
            var part = (((other.X - X) * other.RunY) - ((other.Y - Y) * other.RunX)) / across;
            return new(Grid.Nearest(X + (RunX * part)), Grid.Nearest(Y + (RunY * part)));
        }

        /// <summary>How far it is turned from level, to a thousandth of a degree.</summary>
        public Angle Turn() => Angle.FromThousandths((int)Math.Floor((Math.Atan2(RunY, RunX) * 180_000 / Math.PI) + 0.5));
    }
}
