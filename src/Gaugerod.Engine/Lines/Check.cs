using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>Whether a want speaks of places along the course or across it.</summary>
internal enum CheckAxis
{
    /// <summary>Of places along the course.</summary>
    Along,

    /// <summary>Of places across the courses.</summary>
    Across,
}

/// <summary>A want, made ready to be checked against a placing of one face, in steps.</summary>
/// <param name="Want">Its place among the run's wants; -1 for what the limits ask.</param>
/// <param name="Face">The face's place on the run.</param>
/// <param name="Must">Whether it is a must.</param>
/// <param name="Weight">A wish's weight.</param>
internal abstract record Check(int Want, int Face, bool Must, int Weight)
{
    /// <summary>A hundredth of a millimetre: nearer than anyone can set a tile.</summary>
    public const long Tolerance = 32;

    /// <summary>The want that it is the aim of: it brings an edge to a joint where it can, of a want that no placing holds; null for any other.</summary>
    public int? AimOf { get; init; }

    /// <summary>Whether the tool asks for it unasked, so that it counts after slivers.</summary>
    public bool IsLate { get; init; }

    /// <summary>Where a tile may begin that way, on the face, so that it may be held; nothing where it does not hang on that.</summary>
    public virtual IEnumerable<long> TargetsOn(CheckAxis axis) => [];

    /// <summary>A tile's side, or a middle, stands on a place: the place less the target is a whole number of repeats.</summary>
    /// <param name="Axis">Which way.</param>
    /// <param name="Targets">Where a tile may begin so that the want is held, on the face.</param>
    public sealed record Stands(int Want, int Face, bool Must, int Weight, CheckAxis Axis, long[] Targets) : Check(Want, Face, Must, Weight)
    {
        public override IEnumerable<long> TargetsOn(CheckAxis axis) => axis == Axis ? Targets : [];

        /// <summary>Whether it is held when a tile begins at a place.</summary>
        /// <param name="start">Where a tile of course 0 begins, along or across.</param>
        /// <param name="repeat">The bond's repeat that way.</param>
        /// <param name="offsets">What courses add to the start, for the way along; a single zero across.</param>
        public bool IsHeld(long start, long repeat, long[] offsets)
        {
            foreach (var target in Targets)
            {
                foreach (var offset in offsets)
                {
                    var off = Grid.Mod(target - start - offset, repeat);
                    if (off <= Tolerance || repeat - off <= Tolerance) return true;
                }
            }

            return false;
        }
    }

    /// <summary>In every course that meets some edges a tile begins, or ends, along them.</summary>
    /// <param name="Target">Where a tile may begin so, along, on the face.</param>
    /// <param name="Stretches">From where to where the edges reach, across.</param>
    public sealed record EveryCourse(int Want, int Face, bool Must, int Weight, long Target, (long From, long To)[] Stretches) : Check(Want, Face, Must, Weight)
    {
        public override IEnumerable<long> TargetsOn(CheckAxis axis) => axis == CheckAxis.Along ? [Target] : [];

        /// <summary>Whether some start along may hold it with this one across: the courses that meet the edges begin alike.</summary>
        public bool MayHold(long v, Courses courses)
        {
            long? first = null;
            foreach (var offset in Met(v, courses))
            {
                if (!Near(first ??= offset, offset, courses.Period)) return false;
            }

            return first is not null;
        }

        /// <summary>Whether it is held.</summary>
        /// <param name="u">Where a tile of course 0 begins along.</param>
        /// <param name="v">Where course 0 begins across.</param>
        /// <param name="courses">The bond's courses.</param>
        public bool IsHeld(long u, long v, Courses courses)
        {
            var any = false;
            foreach (var offset in Met(v, courses))
            {
                var off = Grid.Mod(Target - u - offset, courses.Period);
                if (off > Tolerance && courses.Period - off > Tolerance) return false;
                any = true;
            }

            return any;
        }

        /// <summary>What the courses that meet the edges add to the start.</summary>
        private IEnumerable<long> Met(long v, Courses courses)
        {
            foreach (var (from, to) in Stretches)
            {
                for (var k = Grid.FloorDiv(from + Tolerance - v - courses.Depth, courses.Rise) + 1; v + (k * courses.Rise) < to - Tolerance; k++) yield return courses.Offset(k);
            }
        }
    }

    /// <summary>No leg at some edges is under a size.</summary>
    /// <param name="Edges">The edges, as places in the face's edges; null for every edge.</param>
    /// <param name="SideSize">The size where an edge ends courses.</param>
    /// <param name="LevelSize">The size where an edge lies along them.</param>
    public sealed record AtLeast(int Want, int Face, bool Must, int Weight, int[] Edges, long SideSize, long LevelSize) : Check(Want, Face, Must, Weight);

    /// <summary>The narrowest legs at two sets of edges of this face and another agree to a mark of the tape.</summary>
    /// <param name="Edges">This face's edges.</param>
    /// <param name="OtherFace">The other face's place on the run.</param>
    /// <param name="OtherEdges">Its edges.</param>
    /// <param name="Whole">What an edge where nothing is cut counts as.</param>
    /// <param name="OtherWhole">The same on the other side.</param>
    /// <param name="Mark">The tape's mark.</param>
    public sealed record Equal(int Want, int Face, bool Must, int Weight, int[] Edges, int OtherFace, int[] OtherEdges, long Whole, long OtherWhole, long Mark)
        : Check(Want, Face, Must, Weight);

    /// <summary>The different places at which courses of a bond begin, along.</summary>
    public static long[] Offsets(Courses courses)
    {
        const int Most = 64;
        var offsets = new List<long>();
        for (var k = 0L; k < Most; k++)
        {
            var offset = Grid.Mod(courses.Offset(k), courses.Period);
            if (offsets.Any(known => Near(known, offset, courses.Period))) break;
            offsets.Add(offset);
        }

        return [.. offsets];
    }

    private static bool Near(long one, long other, long repeat)
    {
        var off = Grid.Mod(one - other, repeat);
        return off <= Tolerance * 2 || repeat - off <= Tolerance * 2;
    }
}
