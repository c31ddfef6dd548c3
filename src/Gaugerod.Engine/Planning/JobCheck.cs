using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Finds what stops a job from being planned: faults of its shapes and of what its wants refer to.</summary>
public static class JobCheck
{
    /// <summary>So many pieces' worth of faces are planned only when asked for.</summary>
    public const int ManyPieces = 10_000;

    /// <summary>So many pieces of trim along one edge are planned only when asked for: they are a slip in the unit, most likely.</summary>
    public const int ManyTrimPieces = 2_000;

    /// <summary>All faults, in the order of the job; none when it can be planned.</summary>
    /// <param name="job">The job; its names are known to be unique and to refer to what is there.</param>
    /// <param name="large">Whether more than <see cref="ManyPieces"/> pieces' worth of faces are allowed.</param>
    public static Sequence<Fault> Check(Job job, bool large = false) => Steps(job, large).Last()!.Faults;

    /// <summary>As <see cref="Check"/>, a little at a time, so that the caller may do something else between: nothing until the last.</summary>
    /// <param name="job">The job; its names are known to be unique and to refer to what is there.</param>
    /// <param name="large">Whether more than <see cref="ManyPieces"/> pieces' worth of faces are allowed.</param>
    public static IEnumerable<CheckedJob?> Steps(Job job, bool large = false)
    {
        ArgumentNullException.ThrowIfNull(job);
        return FaceByFace(job, large);
    }

    private static IEnumerable<CheckedJob?> FaceByFace(Job read, bool large)
    {
        var runs = new List<FinishedRun>();
        var (faults, findings) = (new List<Fault>(), new List<Finding>());
        // Walls stand over the floors' beds, so those come first.
        var bases = JobBases.Of(read);
        var job = WallsOnBeds.Stood(read, bases, faults, findings);
        yield return null;
        var (pieces, most, largest, whole) = (0.0, 0.0, 0, true);
        for (var i = 0; i < job.Runs.Count; i++)
        {
            FinishedRun? last = null;
            foreach (var sofar in JobRuns.FaceByFace(job, i))
            {
                last = sofar;
                yield return null;
            }

            var finished = last!;
            runs.Add(finished);
            faults.AddRange(finished.Faults.Where(fault => !faults.Contains(fault)));
            whole &= finished.Faults.Count == 0;
            if (SmallestFault(job, i) is { } small) faults.Add(small);
            faults.AddRange(SettingChecks.Find(job, i));
            if (finished.Faults.Count > 0) continue;
            faults.AddRange(WantFaults.Find(job, i, finished));
            if (!large) faults.AddRange(LongTrims(job, finished).Where(fault => !faults.Contains(fault)));
            var bond = BondFaults.Bond(job, i, out var unfit);
            faults.AddRange(unfit);
            if (bond is null) continue;
            var ofRun = finished.Faces.Sum(face => Pieces(face, bond));
            if (ofRun > most) (most, largest) = (ofRun, i);
            pieces += ofRun;
        }

        if (whole && !large && pieces > ManyPieces)
        {
            faults.Add(new(
                string.Create(CultureInfo.InvariantCulture, $"runs[{largest}].faces"), string.Create(CultureInfo.InvariantCulture, $"about {pieces:0} pieces in the job"),
                string.Create(CultureInfo.InvariantCulture, $"at most {ManyPieces} pieces, unless a large job is asked for (--large)"),
                "look for a length in the wrong unit"));
        }

        faults.AddRange(bases.Faults);
        faults.AddRange(JobBoards.Faults(job, large));
        yield return new(job, faults.ToSequence(), runs) { Bases = bases with { OnBeds = findings.ToSequence() } };
    }

    /// <summary>
    /// Faults of one face's own shape, as measured, for a job that cannot be checked as a whole; what its run takes off
    /// it is not looked at.
    /// </summary>
    /// <param name="index">The face's place in the job, counted from zero.</param>
    /// <param name="face">The face.</param>
    /// <param name="tape">How lengths are said.</param>
    public static Sequence<Fault> Shape(int index, Face face, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(face);
        var remarks = new Remarks(tape);
        FaceDrawing.Draw(new(index, face), remarks);
        return remarks.Faults.ToSequence();
    }

    // No leg of a tile is longer than the tile: every cut would break the limit.
    private static Fault? SmallestFault(Job job, int index)
    {
        var (run, product) = (job.Runs[index], JobRuns.ProductOf(job, job.Runs[index]));
        var longest = Length.Max(product.Width, product.Height);
        return run.Limits.Smallest is { } smallest && smallest > longest
            ? new(
                string.Create(CultureInfo.InvariantCulture, $"runs[{index}].limits.smallest"), LengthText.Finer(smallest, job.Tape),
                $"a cut no larger than the tile, {LengthText.Finer(longest, job.Tape)}", LengthText.Down(longest, job.Tape))
            : null;
    }

    private static IEnumerable<Fault> LongTrims(Job job, FinishedRun run)
    {
        for (var i = 0; i < job.Trims.Count; i++)
        {
            var trim = job.Trims[i];
            var lines = run.Faces.SelectMany(face => face.Edges.Where(edge => string.Equals(edge.Trimmed?.Of, trim.Name, StringComparison.Ordinal)).Select(edge => (Face: face.Name, edge.Name, Side: Math.Sqrt((double)Segments.Dot(edge.From, edge.To, edge.From, edge.To)))));
            if (trim.IsWorked || lines.OrderByDescending(line => line.Side).FirstOrDefault() is not { Face: not null } longest) continue;
            var pieces = longest.Side / (trim.Stock + trim.Joint).Steps;
            if (pieces <= ManyTrimPieces) continue;
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"trims[{i}].length"), string.Create(CultureInfo.InvariantCulture, $"about {pieces:0} pieces along {longest.Name} of '{longest.Face}'"),
                string.Create(CultureInfo.InvariantCulture, $"at most {ManyTrimPieces} pieces of trim along an edge, unless a large job is asked for (--large)"),
                "look for a length in the wrong unit");
        }
    }

    private static double Pieces(FinishedFace face, Bond bond) =>
        (double)face.Field.DoubledArea / 2 / (double)bond.Lattice.Area * bond.Motif.Count;
}
