using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>One strip of a border: its field, and how far it is turned from level.</summary>
internal sealed record BorderStrip(FinishedFace Face, Angle Turn);

/// <summary>A border's strips, and the ring inside it from which the rest of the field begins.</summary>
internal sealed record BorderFrame(Sequence<BorderStrip> Strips, Ring Inside)
{
    /// <summary>Lays a frame along the outer ring of a field; null, with remarks, when it is wider than the field has room for.</summary>
    /// <param name="field">The field.</param>
    /// <param name="border">The border.</param>
    /// <param name="path">Where it stands in the job.</param>
    /// <param name="half">Half the joint beside it.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static BorderFrame? Of(FinishedFace field, Zone.Border border, string path, Length half, Remarks remarks)
    {
        var ring = field.Field.Outer;
        if (Arc(field, ring) is { } arc)
        {
            remarks.Refuse(path, $"a border along the arc \"{arc}\"", "a border along straight sides: a strip is laid along each", "a rug or a band");
            return null;
        }

        var sides = Enumerable.Range(0, ring.Points.Count).Select(i => new Side(new(NameOf(field, ring, i), EdgeKind.Zone), NameOf(field, ring, i), Hand.Neither, path)).ToSequence();
        var drawn = new DrawnRing(border.Name, path, ring, sides);
        if (Frame(field, drawn, border.Width, half) is not var (inner, inside))
        {
            remarks.Refuse(
                path + ".width", remarks.Say(border.Width),
                $"a border that leaves something of \"{field.Name}\" inside it, clear of openings", Widest(field, drawn, half, remarks.Tape));
            return null;
        }

        var strips = new List<BorderStrip>();
        for (var i = 0; i < ring.Points.Count; i++)
        {
            if (Strip(field, border, ring, inner, i, half) is { } strip) strips.Add(strip);
        }

        if (strips.Count == ring.Points.Count) return new(strips.ToSequence(), inside);
        remarks.Refuse(path + ".width", remarks.Say(border.Width), "a border whose every strip has some length", "a narrower border");
        return null;
    }

    /// <summary>The inner edge of the strips, and where the rest begins; null when the field has no room for them.</summary>
    private static (Ring Inner, Ring Inside)? Frame(FinishedFace field, DrawnRing drawn, Length width, Length half) =>
        width > half && Moved(drawn, width - half) is { } inner && Moved(drawn, width + half) is { } inside && field.Field.Inner.All(hole => RingChecks.LiesInside(hole, inside))
            ? (inner, inside)
            : null;

    /// <summary>The widest border there is room for, on a mark of the tape; null where there is none.</summary>
    private static string? Widest(FinishedFace field, DrawnRing drawn, Length half, Tape tape)
    {
        var box = drawn.Ring.Bounds;
        var (fits, most) = (0L, Length.Min(box.Width, box.Height).Steps / tape.Mark.Steps);
        while (most - fits > 1)
        {
            var marks = (fits + most) / 2;
            if (Frame(field, drawn, tape.Mark * marks, half) is null) most = marks;
            else fits = marks;
        }

        return fits == 0 ? null : LengthText.Nearest(tape.Mark * fits, tape);
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
    private static string? Arc(FinishedFace field, Ring ring)
    {
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
