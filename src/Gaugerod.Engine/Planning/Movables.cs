using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Settles what a job leaves open before it is planned: a run is placed with its things as asked, they are moved to the joints of
/// that placing, or of its alternatives, within their ranges, and the run is placed again. The best is kept, if the run does
/// no worse for it.
/// </summary>
internal static class Movables
{
    private const string Rule = "moved";

    /// <summary>Whether anything of a face may be moved.</summary>
    public static bool Any(Face face) =>
        face.Openings.Any(opening => opening.Range is not null) || face.Zones.Any(zone => zone is Zone.Strip { Range: not null })
        || (face.Shape is FaceShape.Read read && read.Fixtures.Any(fixture => fixture.Range is not null));

    /// <summary>Step by step: null whenever a little work is done, at the last the job as settled, with what was moved.</summary>
    public static IEnumerable<(CheckedJob Job, Sequence<Finding> Findings)?> Settle(CheckedJob ready)
    {
        var findings = new List<Finding>();
        for (var i = 0; i < ready.Job.Runs.Count; i++)
        {
            var (job, run) = (ready.Job, ready.Job.Runs[i]);
            var faces = run.Faces.Select(name => job.Faces.FirstOrDefault(face => string.Equals(face.Name, name, StringComparison.Ordinal))).OfType<Face>().ToList();
            if (run.Place is not null || faces.Count < run.Faces.Count || !faces.Any(Any)) continue;
            if (!JobRuns.IsStraight(run, ready.Runs[i].Faces))
            {
                findings.Add(new(FindingLevel.Note, Rule, run.Name, "What may be moved was left as asked: no joint of a pattern runs through to bring it to.", "", "", Remarks.NoSource));
                continue;
            }

            // What may be moved is meant to meet joints: that is wished for, so that the last placing keeps to it.
            run = run with { Wants = run.Wants.Concat(faces.SelectMany(Wishes)).ToSequence() };
            job = job with { Runs = job.Runs.Select((one, k) => k == i ? run : one).ToSequence() };
            var wished = JobCheck.Steps(job, large: true).Last()!;
            // A thing that stands wholly outside the tile has no edge to bring to a joint.
            if (wished.Faults.Count > 0) continue;
            ready = wished;
            LinesFound? asked = null;
            foreach (var sofar in LineSearch.Search(JobRuns.Problem(job, run, ready.Runs[i].Faces)))
            {
                asked = sofar;
                yield return null;
            }

            // The joints of other good places may meet more than those of the best.
            var (best, tried) = (asked!.Best.Score, new HashSet<Sequence<Face>> { job.Faces });
            foreach (var placing in asked.Alternatives.Prepend(asked.Best))
            {
                var moved = new MovedThings(asked.Model, placing);
                var changed = job with { Faces = job.Faces.Select(face => faces.Contains(face) ? moved.Move(face, run.Faces.ToList().IndexOf(face.Name)) : face).ToSequence() };
                if (!tried.Add(changed.Faces)) continue;
                var again = JobCheck.Steps(changed, large: true).Last()!;
                if (again.Faults.Count > 0) continue;
                LinesFound? found = null;
                foreach (var sofar in LineSearch.Search(JobRuns.Problem(changed, run, again.Runs[i].Faces)))
                {
                    found = sofar;
                    yield return null;
                }

                var no = new ScoreOrder(run.Order).Compare(found!.Best.Score, best);
                // As good as asked is enough, since its edges meet joints; a later one must be better.
                if (no > 0 || (no == 0 && !ReferenceEquals(ready.Job, job))) continue;
                (best, ready) = (found.Best.Score, again);
            }

            findings.AddRange(Said(job, ready.Job));
        }

        yield return (ready, findings.ToSequence());
    }

    private static IEnumerable<Want> Wishes(Face face)
    {
        var edges = face.Openings.Where(opening => opening.Range is not null).SelectMany(opening => EdgesOf(opening.Name, opening.Range!))
            .Concat(face.Zones.OfType<Zone.Strip>().Where(strip => strip.Range is not null).Select(strip => strip.Name))
            .Concat((face.Shape as FaceShape.Read)?.Fixtures.Where(fixture => fixture.Range is not null).Select(fixture => fixture.Name) ?? []);
        return edges.Select(edge => new Want.JointOnEdge(new(face.Name, edge), Must: false, Weight: 1));
    }

    /// <summary>The edges of an opening that its range may bring to joints.</summary>
    private static IEnumerable<string> EdgesOf(string name, OpeningRange range)
    {
        if (range.Left is not null || range.Width is not null) yield return name + ".left";
        if (range.Left is not null || range.Width is not null) yield return name + ".right";
        if (range.Bottom is not null || range.Height is not null) yield return name + ".bottom";
        if (range.Bottom is not null || range.Height is not null) yield return name + ".top";
    }

    private static IEnumerable<Finding> Said(Job before, Job after)
    {
        var tape = before.Tape;
        string Say(Length length) => LengthText.Finer(length, tape);
        foreach (var (was, now) in before.Faces.Zip(after.Faces))
        {
            foreach (var (old, opening) in was.Openings.Zip(now.Openings).Where(pair => pair.First != pair.Second))
            {
                var (from, to) = (old.Ring.Bounds, opening.Ring.Bounds);
                yield return Moved(now.Name, opening.Name, string.Create(CultureInfo.InvariantCulture,
                    $"{Say(to.Left)} from the left, {Say(to.Bottom)} up, {Say(to.Width)} by {Say(to.Height)}; asked was {Say(from.Left)}, {Say(from.Bottom)}, {Say(from.Width)} by {Say(from.Height)}"));
            }

            foreach (var (old, zone) in was.Zones.Zip(now.Zones).Where(pair => pair.First != pair.Second))
            {
                if (old is Zone.Strip a && zone is Zone.Strip b) yield return Moved(now.Name, b.Name, $"from {Say(b.From)} up; asked was {Say(a.From)}");
            }

            if (was.Shape is not FaceShape.Read one || now.Shape is not FaceShape.Read other) continue;
            foreach (var (old, fixture) in one.Fixtures.Zip(other.Fixtures).Where(pair => pair.First != pair.Second))
            {
                yield return Moved(now.Name, fixture.Name, $"{Say(fixture.HeightLeft)} high; asked was {Say(old.HeightLeft)}");
            }
        }

        static Finding Moved(string face, string name, string where) =>
            new(FindingLevel.Note, Rule, $"{name} on {face}", $"Moved to meet the joints: {where}. Build it so before tiling.", "", "", Remarks.NoSource);
    }
}
