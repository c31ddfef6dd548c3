using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>A step from a tile to its like one repeat further on.</summary>
/// <param name="Along">Along the course.</param>
/// <param name="Across">Across the courses.</param>
public readonly record struct Repeat(Length Along, Length Across);

/// <summary>The two steps by which a bond repeats over the whole plane.</summary>
/// <param name="First">The first; along the course where the bond has courses.</param>
/// <param name="Second">The second; not in line with the first.</param>
public sealed record Lattice(Repeat First, Repeat Second);

/// <summary>
/// How tiles repeat: a motif of tiles, set down again at every step of a lattice. Places are along the course and across
/// it; <paramref name="Lay"/> says whether along is level or upright.
/// </summary>
/// <param name="Lattice">The lattice.</param>
/// <param name="Motif">The tiles of one repeat, joints left out, the first with its lower left corner at the origin.</param>
/// <param name="Lay">Which way along is.</param>
public sealed record Bond(Lattice Lattice, Sequence<Box> Motif, Lay Lay)
{
    /// <summary>The bond's courses, when it is a straight one: equal courses of equal tiles with joints in line.</summary>
    internal Courses? Courses => Bonds.Courses.Of(this);
}
