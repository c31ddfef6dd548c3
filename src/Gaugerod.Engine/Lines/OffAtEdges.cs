using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>By how much at the most cuts may come out smaller than planned, edge by edge; by nothing where cuts are compared as planned.</summary>
/// <param name="by">For each face of the run, for each of its edges; empty for nothing anywhere.</param>
internal sealed class OffAtEdges(Sequence<Sequence<Length>> by)
{
    private static readonly long[] s_nothing = [0];

    private readonly long[][] _by = [.. by.Select(face => face.Select(edge => edge.Steps).ToArray())];

    /// <summary>Whether cuts are compared at their worst.</summary>
    public bool Any => _by.Length > 0;

    /// <summary>By how much at one edge, in steps.</summary>
    public long At(int face, int edge) => Any ? _by[face][edge] : 0;

    /// <summary>By edges, of one face; empty for nothing.</summary>
    public long[] OfFace(int face) => Any ? _by[face] : [];

    /// <summary>Each different one on a face, once.</summary>
    public IEnumerable<long> Of(int face) => Any && _by[face].Length > 0 ? _by[face].Distinct() : s_nothing;
}
