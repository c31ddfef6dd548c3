using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>What a search is asked for.</summary>
/// <param name="Faces">The run's faces, left to right.</param>
/// <param name="Product">The tile.</param>
/// <param name="Bond">The bond.</param>
/// <param name="Restart">Whether each face has an x offset of its own.</param>
/// <param name="Joint">The joint widths allowed.</param>
/// <param name="Limits">What is allowed.</param>
/// <param name="Wants">What is asked for.</param>
/// <param name="Order">What placings are compared by.</param>
/// <param name="Tape">The tape.</param>
internal sealed record RunProblem(
    Sequence<FinishedFace> Faces, Product Product, BondRequest Bond, bool Restart, JointRange Joint,
    Limits Limits, Sequence<Want> Wants, Sequence<Criterion> Order, Tape Tape)
{
    /// <summary>By how much at the most cuts at each edge of each face may come out smaller than planned, where the smallest cut is compared so; none, the default, where it is compared as planned.</summary>
    public Sequence<Sequence<Length>> Off { get; init; } = [];
}

/// <summary>
/// A run with one joint width, ready to be scored at any placing. A placing here is, for each face, u, where a tile of
/// course 0 begins along on it, and v, where course 0 begins across.
/// </summary>
internal sealed class RunModel
{
    private readonly FaceReckoner[] _reckoners;
    private readonly FaceCount[] _counts;

    public RunModel(RunProblem problem, Length joint, Relax relax = default)
    {
        Problem = problem;
        Relax = relax;
        Joint = joint;
        Bond = BondMaker.Straight(problem.Bond, problem.Product, joint);
        Courses = Bond.Courses ?? throw new ArgumentException("Not a straight bond.", nameof(problem));
        Offsets = Check.Offsets(Courses);
        Frames = [.. problem.Faces.Select(face => FaceFrame.Of(face, Bond.Lay))];
        Checks = CheckMaker.Make(this);
        Off = new(problem.Off);
        _reckoners = [.. Frames.Select((frame, f) => new FaceReckoner(frame, Courses, Off.OfFace(f)))];
        _counts = new FaceCount[Frames.Length];
    }

    public RunProblem Problem { get; }

    /// <summary>Whether each face has an x offset of its own; one face alone has one anyway.</summary>
    public bool Restart => Problem.Restart && Frames.Length > 1;

    public Length Joint { get; }

    /// <summary>By how much limits are let out; nothing for the true score.</summary>
    public Relax Relax { get; }

    public Bond Bond { get; }

    public Courses Courses { get; }

    public FaceFrame[] Frames { get; }

    public Check[] Checks { get; }

    /// <summary>By how much cuts may come out smaller, where the smallest cut is compared so.</summary>
    public OffAtEdges Off { get; }

    /// <summary>Whether every edge of every face is square to the courses or in line with them.</summary>
    public bool IsSquare => Frames.All(frame => frame.IsSquare);

    /// <summary>The different places at which courses begin, along.</summary>
    public long[] Offsets { get; }

    /// <summary>After how many courses nothing new comes where the tiling may not be moved along as well.</summary>
    public int OwnRows => Math.Max(Courses.Repeat, Offsets.Length);

    /// <summary>How many placings were scored.</summary>
    public long Examined { get; private set; }

    /// <summary>How much was reckoned: the edges of faces scored, and of those promised a score.</summary>
    public long Work { get; private set; }

    private long Sliver => Problem.Limits.Sliver.Steps - Relax.Most;

    /// <summary>The shorter side of a tile: what the smallest cut is when nothing is cut.</summary>
    public long Whole => Math.Min(Courses.Length, Courses.Depth);

    /// <summary>Scores a placing; tiles are not counted here.</summary>
    public Score Score(ReadOnlySpan<long> u, ReadOnlySpan<long> v) => Score(u, v, 0, Frames.Length);

    /// <summary>Scores one face of a placing.</summary>
    public Score ScoreFace(ReadOnlySpan<long> u, ReadOnlySpan<long> v, int face) => Score(u, v, face, face + 1);

    /// <summary>Whether a check is held in the placing that was scored last.</summary>
    public bool IsHeld(Check check, ReadOnlySpan<long> u, ReadOnlySpan<long> v) => check switch
    {
        Check.Stands stands => stands.Axis == CheckAxis.Across
            ? stands.IsHeld(v[check.Face], Courses.Rise, [0])
            : stands.IsHeld(u[check.Face], Courses.Period, Offsets),
        Check.EveryCourse every => every.IsHeld(u[check.Face], v[check.Face], Courses),
        PointCheck point => point.IsHeld(u[check.Face], v[check.Face], Courses),
        Check.AtLeast least => Least(check.Face, least),
        Check.Equal equal => Math.Abs(
            Narrowest(equal.Face, equal.Edges, equal.Whole) - Narrowest(equal.OtherFace, equal.OtherEdges, equal.OtherWhole)) <= equal.Mark,
        _ => throw new ArgumentOutOfRangeException(nameof(check), check, "No such check."),
    };

    /// <summary>Whether a placing leaves any leg under half of the tile, the way it is cut.</summary>
    public bool HasUnderHalf(RunPlacing placing)
    {
        _ = Score(placing.U, placing.V);
        return Enumerable.Range(0, Frames.Length).Any(face => !Least(face, HalfTile(face)));
    }

    /// <summary>The narrowest leg at each edge of a face in the placing that was scored last, as <see cref="FaceReckoner.LeastAtEdge"/>.</summary>
    public ReadOnlySpan<long> LeastAtEdge(int face) => _reckoners[face].LeastAtEdge;

    /// <summary>The half-tile guidance as a check on all edges of a face.</summary>
    public Check.AtLeast HalfTile(int face) => CheckMaker.HalfTile(face, Frames[face], Courses, Relax);

    /// <summary>The edge, in words, at which a leg stands in the placing that was scored last; null where none has one.</summary>
    public string? NarrowestEdge(long leg)
    {
        for (var f = 0; f < Frames.Length; f++)
        {
            var edge = _reckoners[f].LeastAtEdge.IndexOf(leg);
            if (edge >= 0) return EdgeWords.Of(Frames[f].Face.Name, Frames[f].Face.Edges[edge].Name);
        }

        return null;
    }

    /// <summary>Counts the reckoning of some faces.</summary>
    public void Count(int from, int to)
    {
        for (var f = from; f < to; f++) Work += Frames[f].Face.Edges.Count;
    }

    private Score Score(ReadOnlySpan<long> u, ReadOnlySpan<long> v, int from, int to)
    {
        Examined++;
        Count(from, to);
        var (slivers, cuts, least, judged, mirror) = (0, 0, Whole, Whole, 0L);
        for (var f = from; f < to; f++)
        {
            var count = _counts[f] = _reckoners[f].Reckon(u[f], v[f], Sliver, Relax);
            slivers += count.Slivers;
            cuts += count.Cuts;
            if (count.Least is { } leg) least = Math.Min(least, leg);
            judged = Math.Min(judged, count.Judged);
            mirror += Mirror(f);
        }

        var (musts, wishes, late, missed) = (0, 0, 0, 0);
        foreach (var check in Checks)
        {
            if (check.Face < from || check.Face >= to || IsHeld(check, u, v)) continue;
            if (check.Must) musts++;
            else if (check.IsLate) late += check.Weight;
            else wishes += check.Weight;
            if (check.Want >= 0) missed++;
        }

        return new(musts, wishes, slivers, Length.FromSteps(least), Length.FromSteps(mirror), cuts, 0, missed) { UnaskedMissed = late, AtWorst = Off.Any ? Length.FromSteps(judged) : null };
    }

    private long Mirror(int face)
    {
        var frame = Frames[face];
        if (frame.LeftEdges.Length == 0 || frame.RightEdges.Length == 0) return 0;
        var whole = frame.Lay == Lay.Level ? Courses.Length : Courses.Depth;
        return Math.Abs(Narrowest(face, frame.LeftEdges, whole) - Narrowest(face, frame.RightEdges, whole));
    }

    private bool Least(int face, Check.AtLeast check)
    {
        var least = _reckoners[face].LeastAtEdge;
        foreach (ref readonly var edge in Frames[face].Sides.AsSpan())
        {
            if (least[edge.Edge] < check.SideSize && Array.IndexOf(check.Edges, edge.Edge) >= 0) return false;
        }

        foreach (ref readonly var edge in Frames[face].Levels.AsSpan())
        {
            if (least[edge.Edge] < check.LevelSize && Array.IndexOf(check.Edges, edge.Edge) >= 0) return false;
        }

        return true;
    }

    private long Narrowest(int face, int[] edges, long whole)
    {
        var least = whole;
        foreach (var edge in edges) least = Math.Min(least, _reckoners[face].LeastAtEdge[edge]);
        return least;
    }
}
