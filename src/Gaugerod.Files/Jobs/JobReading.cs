using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>What came of reading a job file.</summary>
public abstract record JobReading
{
    private JobReading()
    {
    }

    /// <summary>It was read. The engine may still find faults with the job; <see cref="Locate"/> says where they stand in the file.</summary>
    public sealed record Understood : JobReading
    {
        private readonly Entry _root;
        private readonly FaultLog _log;

        internal Understood(Job job, Entry root, FaultLog log) => (Job, _root, _log) = (job, root, log);

        /// <summary>
        /// Lengths that were read by the rule but may have been meant otherwise: to be said beside the engine's faults. A
        /// job without faults has them among its <see cref="Job.Remarks"/>.
        /// </summary>
        public Sequence<FileFault> Doubts => _log.Doubts;

        /// <summary>The job.</summary>
        public Job Job { get; }

        /// <summary>
        /// Finds the line of a fault that names its place by a path. What the file leaves out is found at the group
        /// that could hold it.
        /// </summary>
        public FileFault Locate(Fault fault)
        {
            ArgumentNullException.ThrowIfNull(fault);
            var entry = PathFinder.Nearest(_root, fault.Path);
            return _log.Located(entry.At, fault.Path, fault.Found, fault.Expected, fault.Nearest) with { Mends = fault.Mends };
        }
    }

    /// <summary>It was refused; nothing was guessed.</summary>
    /// <param name="Faults">All that was found, in the file's order; at least one, at most 100.</param>
    public sealed record Refused(Sequence<FileFault> Faults) : JobReading
    {
        /// <summary>As much of the job as could be read, for a look at it; what was refused is missing. Null where nothing could be.</summary>
        public Job? AsFar { get; init; }
    }
}
