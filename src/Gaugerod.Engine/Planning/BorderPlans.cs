using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Plans a border: each strip is laid along its side by itself, and all of them are one run.</summary>
internal static class BorderPlans
{
    /// <summary>Step by step; the last carries the plan.</summary>
    public static IEnumerable<RunStep> Steps(Job job, RunRequest request, FinishedRun finished, FaceLetters letters)
    {
        var (asked, strips) = (request, new List<RunPlan>());
        RunStep step = default;
        var hasUnderHalf = false;
        for (var i = 0; i < finished.Faces.Count; i++)
        {
            foreach (var sofar in RunSteps.Of(job, Strip(request, finished.Faces[i], finished.Strips[i]), [finished.Faces[i]], letters))
            {
                step = sofar with { Plan = null };
                if (sofar.Plan is { } plan)
                {
                    strips.Add(StripLines.Snapped(plan));
                    // All strips have the joint that the first was given.
                    var joint = plan.Best.Placing.Joint;
                    request = request with { Joint = request.Joint with { Least = joint, Wanted = joint, Most = joint } };
                }

                hasUnderHalf |= sofar.HasUnderHalf;
                yield return step;
            }
        }

        yield return step with { Plan = Joined(job, asked, strips), HasUnderHalf = hasUnderHalf };
    }

    /// <summary>A strip as a run of its own along its side.</summary>
    private static RunRequest Strip(RunRequest run, FinishedFace face, Angle turn)
    {
        // The strip is meant to be as wide as whole tiles; the course along its inner side says so.
        var inner = face.Edges[2].Name;
        var wants = run.Wants.Where(want => string.Equals(FaceOf(want), face.Name, StringComparison.Ordinal))
            .Append(new Want.FullCourse(new(face.Name, inner), Must: false, Weight: 1));
        return run with
        {
            Name = $"{run.Name}: {face.Name}", Faces = [face.Name], Corners = Corners.Wrap, Through = null, Place = null,
            Bond = run.Bond with { Turn = run.Bond.Turn + turn }, Wants = wants.ToSequence(),
        };
    }

    private static RunPlan Joined(Job job, RunRequest request, List<RunPlan> strips)
    {
        var score = strips.Select(strip => strip.Best.Score).Aggregate((one, other) => one.And(other));
        // Whether a strip keeps the course it was given is said where it does not.
        var wants = strips.SelectMany(strip => strip.Best.Wants).Where(outcome => !outcome.Held || request.Wants.Contains(outcome.Want)).ToSequence();
        var narrowest = strips.First(strip => strip.Best.Score.SmallestCut == score.SmallestCut).Faces[0].Face.Name;
        var best = new Proposal(
            strips[0].Best.Placing, strips.SelectMany(strip => strip.Best.Faces).ToSequence(), score, wants, Reasons.Why(score, narrowest, wants, job.Tape));
        return new(
            request, best, Proof(strips, job.Tape), [],
            strips.SelectMany(strip => strip.Lines).ToSequence(), strips.SelectMany(strip => strip.Rods).ToSequence(), strips.SelectMany(strip => strip.Faces).ToSequence())
        {
            IsPattern = true,
            Strips = strips.ToSequence(),
            Finished = strips.SelectMany(strip => strip.Finished).ToSequence(),
            Turned = strips.SelectMany(strip => strip.Turned).ToSequence(),
        };
    }

    /// <summary>Of all strips only as much is proved as of the one of which least is; none can have more than the least of their bounds.</summary>
    private static Proof Proof(List<RunPlan> strips, Tape tape)
    {
        var (kind, examined) = (strips.Min(strip => strip.Proof.Kind), strips.Sum(strip => strip.Proof.Examined));
        var bound = strips.Min(strip => strip.Proof.Bound);
        var words = kind switch
        {
            ProofKind.Exact => "Each strip is laid by itself, and with this joint no better place exists for any of them.",
            ProofKind.Bounded => string.Create(CultureInfo.InvariantCulture,
                $"Each strip is laid by itself; with this joint no places that meet as many wants leave a smallest cut over {LengthText.Nearest(bound, tape)} on all {strips.Count} strips."),
            _ => "Each strip is laid by itself; not of all of them is it proved that no better place exists.",
        };
        return new(kind, bound, examined, words);
    }

    private static string FaceOf(Want want) => want switch
    {
        Want.JointAtHeight at => at.Face,
        Want.JointOnEdge on => on.Edge.Face,
        Want.FullCourse full => full.Edge.Face,
        Want.AtLeast least => least.Edge.Face,
        Want.Centred centred => centred.Face,
        Want.InLine line => line.Face,
        Want.HoleOn hole => hole.Face,
        Want.EqualCuts equal => equal.One.Face,
        _ => throw new UnreachableException($"No face of the want {want}: every want is at a face, and this switch names them all."),
    };
}
