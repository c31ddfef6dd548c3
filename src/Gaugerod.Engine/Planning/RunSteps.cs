using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Where the ways to the plan of a run part.</summary>
internal static class RunSteps
{
    /// <summary>Step by step; the last carries the plan.</summary>
    public static IEnumerable<RunStep> Of(Job job, RunRequest request, FinishedRun finished, FaceLetters letters) => finished.Strips.Count > 0
        ? BorderPlans.Steps(job, request, finished, letters)
        : JobRuns.IsStraight(request, finished.Faces)
            ? RunPlans.Steps(job, request, RunRanges.WithOff(job, request, JobRuns.Problem(job, request, finished.Faces), finished.Surveys), letters)
            : PatternPlans.Steps(job, request, finished.Faces, letters);

    /// <summary>As the other, of faces that are laid as one.</summary>
    public static IEnumerable<RunStep> Of(Job job, RunRequest request, Sequence<FinishedFace> faces, FaceLetters letters) => JobRuns.IsStraight(request, faces)
        ? RunPlans.Steps(job, request, JobRuns.Problem(job, request, faces), letters)
        : PatternPlans.Steps(job, request, faces, letters);
}
