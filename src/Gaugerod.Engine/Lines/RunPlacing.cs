using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>A placing found by the search: for each face where a tile of course 0 begins, along and across, and its score.</summary>
/// <param name="U">Along, by face.</param>
/// <param name="V">Across, by face.</param>
/// <param name="Score">Its score.</param>
internal sealed record RunPlacing(long[] U, long[] V, Score Score)
{
    /// <summary>The placing on each face, the named tile the first that lies wholly right of and above the field's lower left.</summary>
    public Sequence<Placing> OnFaces(RunModel model) =>
        Enumerable.Range(0, U.Length).Select(f => Placed(model, U[f], V[f])).ToSequence();

    /// <summary>How far this placing is from another, as a share of a repeat, at the face where they differ most.</summary>
    public double Distance(RunPlacing other, Courses courses)
    {
        var most = 0.0;
        for (var f = 0; f < U.Length; f++)
        {
            most = Math.Max(most, Around(V[f] - other.V[f], courses.Rise * courses.Repeat) / (double)courses.Rise);
            var rows = (long)Math.Round((V[f] - other.V[f]) / (double)courses.Rise);
            most = Math.Max(most, Around(U[f] - other.U[f] - courses.Offset(rows), courses.Period) / (double)courses.Period);
        }

        return most;
    }

    private static long Around(long off, long repeat)
    {
        var rest = Grid.Mod(off, repeat);
        return Math.Min(rest, repeat - rest);
    }

    private static Placing Placed(RunModel model, long u, long v) => model.Bond.Lay == Lay.Level
        ? new(Length.FromSteps(u), Length.FromSteps(v), model.Joint)
        : new(Length.FromSteps(v), Length.FromSteps(u), model.Joint);
}
