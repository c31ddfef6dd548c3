using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>A job that <see cref="JobCheck"/> has looked at, with the faces it drew for that: they need not be drawn again to plan it.</summary>
public sealed class CheckedJob
{
    internal CheckedJob(Job job, Sequence<Fault> faults, IReadOnlyList<FinishedRun> runs) => (Job, Faults, Runs) = (job, faults, runs);

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>All faults, in the order of the job; none when it can be planned.</summary>
    public Sequence<Fault> Faults { get; }

    /// <summary>What goes under its tile.</summary>
    internal JobBases Bases { get; init; } = new([], [], []);

    /// <summary>Its runs with their faces finished.</summary>
    internal IReadOnlyList<FinishedRun> Runs { get; }
}
