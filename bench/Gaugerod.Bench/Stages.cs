using System.Diagnostics;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;

namespace Gaugerod.Bench;

/// <summary>Where the time of one plan goes, warm: for a look while working, not for the record.</summary>
internal static class Stages
{
    public static Job Load(string sample) =>
        JobReader.Read(File.ReadAllBytes(sample), sample) is JobReading.Understood read ? read.Job : throw new ArgumentException("Not a job: " + sample);

    public static void Print(string sample, int rounds = 6)
    {
        var job = Load(sample);
        for (var round = 0; round < rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            void Lap(string what, object? more = null)
            {
                if (round == rounds - 1) Console.WriteLine($"{watch.Elapsed.TotalMilliseconds,9:0.00} ms  {what} {more}");
                watch.Restart();
            }

            var finished = JobRuns.Finish(job, 0);
            Lap("finish");
            var problem = JobRuns.Problem(job, job.Runs[0], finished.Faces);
            var joints = JointWidths.Of(problem);
            Lap("joints", joints.Count);
            var search = new JointSearch(new(problem, joints[0]));
            Lap("model", $"{search.Starts.Length} starts");
            var best = search.Improve().Last()!;
            Lap("improve", $"{search.Model.Examined} examined {best.Score}");
            var narrowed = search.Model.IsSquare ? null : new Narrowing(search, best);
            best = narrowed?.Narrow().Last() ?? best;
            Lap("narrowing", $"{narrowed?.Bound} {best.Score} {narrowed?.Examined}");
            var refiner = new Refiner(search, best);
            best = refiner.Refine().Last();
            Lap("refine", $"{search.Model.Examined} {refiner.Ties}");
            _ = Alternatives.Of(search, best).Last();
            Lap("alternatives", search.Model.Examined);
            var proof = ProofMaker.Prove(search, best, narrowed, refiner.Complete, 0);
            Lap("proof", proof);
            _ = new TileCounter(search.Model).Tiles(best);
            Lap("tiles");
            for (var i = 0; i < 20; i++) _ = new TileCounter(search.Model).Pieces(best, [.. search.Model.Frames.Select((_, i) => "F" + i)]);
            Lap("20 x pieces");
            var pieces = new TileCounter(search.Model).Pieces(best, [.. search.Model.Frames.Select((_, i) => "F" + i)]).SelectMany(x => x).ToSequence();
            watch.Restart();
            for (var i = 0; i < 20; i++) _ = Gaugerod.Engine.Cutting.CuttingPlanner.Plan(problem.Product, pieces, job.Tape);
            Lap("20 x cutting");
            _ = Planner.Plan(job);
            Lap("whole plan");
        }
    }
}
