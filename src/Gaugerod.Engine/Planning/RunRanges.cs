using Gaugerod.Engine.Lines;
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

    /// <summary>The problem with how far off cuts may be, where the run's smallest cuts are compared at their worst; else the problem itself.</summary>
    public static RunProblem WithOff(Job job, RunRequest request, RunProblem problem, Sequence<WeighedSurvey> surveys)
    {
        if (!request.Limits.AtWorst) return problem;
        var errors = job.Errors ?? SettingErrors.Usual(job.Tape.Unit);
        var (along, across) = (problem.Product.Width, problem.Product.Height);
        var tile = problem.Bond.Lay == Bonds.Lay.Upright ? (across, along) : (along, across);
        return problem with
        {
            Off = problem.Faces.Select(face => MostOff.Of(face, tile, problem.Joint.Wanted, new(errors, Reading(face.Wall, errors, surveys), SettingErrors.Variation(problem.Product)))).ToSequence(),
        };
    }

    /// <summary>What is to be said where smallest cuts were to be compared at their worst and could not.</summary>
    public static IEnumerable<Finding> NotAtWorst(RunPlan plan)
    {
        if (!plan.Request.Limits.AtWorst || plan.Best.Score.AtWorst is not null) yield break;
        yield return new(FindingLevel.Note, "at-worst", plan.Request.Name, "Smallest cuts are compared at their worst in fields of straight courses only; here they were compared as planned.", "", "", Rooms.Remarks.NoSource);
    }

    // What a survey settled is as sure as its least sure side.
    private static Length Reading(string wall, SettingErrors errors, Sequence<WeighedSurvey> surveys) =>
        surveys.FirstOrDefault(survey => string.Equals(survey.Face, wall, StringComparison.Ordinal)) is { } survey
            ? survey.Sides.Select(side => side.Deviation).Aggregate(Length.Max)
            : errors.Reading;
}
