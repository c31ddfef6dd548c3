using Gaugerod.Cli.Writing;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;

namespace Gaugerod.Cli;

/// <summary>What came of reading a job: the job, or everything that is wrong with it, a line each.</summary>
/// <param name="Job">The job; null when there are faults.</param>
/// <param name="Faults">One line for each fault, with file, place, what was found and what was expected.</param>
internal sealed record ReadJob(Job? Job, Sequence<string> Faults);

/// <summary>The one place where the command line touches the rooms below. Tests put others in its place.</summary>
/// <param name="Read">Reads and checks a job; the flag lifts the limit on how many pieces a job may have.</param>
/// <param name="Plan">Plans it.</param>
/// <param name="PlanFile">The plan as plan.json.</param>
/// <param name="Sheets">Everything else that goes into the folder.</param>
internal sealed record Works(
    Func<ReadOnlyMemory<byte>, string, bool, ReadJob> Read,
    Func<Job, Plan> Plan,
    Func<Plan, byte[]> PlanFile,
    Func<Plan, Sequence<OutputFile>> Sheets)
{
    /// <summary>The real ones.</summary>
    public static Works Real { get; } = new(
        (_, _, _) => throw new NotSupportedException("The reader is being built."),
        Planner.Plan,
        _ => throw new NotSupportedException("The plan writer is being built."),
        _ => throw new NotSupportedException("The sheets are being built."));
}
