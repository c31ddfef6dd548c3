using Gaugerod.Engine.Layouts;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Lines;

/// <summary>A placing that the search proposes for a run.</summary>
/// <param name="Placing">On the run, unrolled.</param>
/// <param name="Faces">On each face, in the face's own coordinates, in the run's order.</param>
/// <param name="Score">How it does.</param>
/// <param name="Wants">How each want comes out.</param>
/// <param name="Why">One sentence: what it gives and, for an alternative, what it costs against the best.</param>
public sealed record Proposal(Placing Placing, Sequence<Placing> Faces, Score Score, Sequence<WantOutcome> Wants, string Why);

/// <summary>Which way a line or a rod runs.</summary>
public enum Axis
{
    /// <summary>A level line; a level rod counts along it.</summary>
    Level,

    /// <summary>A plumb line; a plumb rod counts up along it.</summary>
    Plumb,
}

/// <summary>A line to snap before the first tile.</summary>
/// <param name="Axis">Level or plumb.</param>
/// <param name="Face">On which face.</param>
/// <param name="At">Its height (level) or its distance from the left (plumb), in the face's coordinates.</param>
/// <param name="Why">What it is for.</param>
public sealed record SnapLine(Axis Axis, string Face, Length At, string Why);

/// <summary>The marks of a gauge rod.</summary>
/// <param name="Axis">The level rod counts along a course; the plumb rod counts courses.</param>
/// <param name="Face">On which face.</param>
/// <param name="From">The starting line in words.</param>
/// <param name="Start">Where the starting line lies on the face.</param>
/// <param name="Marks">Where a tile's near side falls, as distances from the starting line; negative below or to the left of it.</param>
public sealed record Rod(Axis Axis, string Face, string From, Length Start, Sequence<Length> Marks);
