using Gaugerod.Engine.Surveys;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says of a planned run how sure its cuts and its wants are.</summary>
internal static class RunRanges
{
    /// <summary>The run with its ranges.</summary>
    public static RunPlan With(Job job, RunPlan plan, Sequence<WeighedSurvey> surveys)
    {
        var errors = job.Errors ?? SettingErrors.Usual(job.Tape.Unit);
        var variation = SettingErrors.Variation(JobRuns.ProductOf(job, plan.Request));
        var ranges = new List<CutRange>();
        foreach (var face in plan.Faces)
        {
            var lines = plan.Lines.Where(line => string.Equals(line.Face, face.Face.SetOut.Name, StringComparison.Ordinal) || string.Equals(line.Face, face.Face.Name, StringComparison.Ordinal)).ToList();
            ranges.AddRange(CutRanges.Of(face.Face, face.Pieces, lines, plan.Best.Placing.Joint, new(errors, Reading(face.Face.Wall, errors, surveys), variation)));
        }

        var known = ranges.ToSequence();
        return plan with { Ranges = known, Best = plan.Best with { Wants = plan.Best.Wants.Select(want => WantSureness.Of(want, known, job.Tape)).ToSequence() } };
    }

    // What a survey settled is as sure as its least sure side.
    private static Length Reading(string wall, SettingErrors errors, Sequence<WeighedSurvey> surveys) =>
        surveys.FirstOrDefault(survey => string.Equals(survey.Face, wall, StringComparison.Ordinal)) is { } survey
            ? survey.Sides.Select(side => side.Deviation).Aggregate(Length.Max)
            : errors.Reading;
}
