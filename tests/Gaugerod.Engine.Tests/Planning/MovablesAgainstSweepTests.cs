using System.Collections.Concurrent;
using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>
/// Where things that are not built yet are put, against the plain way: every open measure at several values, and for each of
/// these settled rooms the best placing there is, which <see cref="Lines.SearchAgainstSweepTests"/> holds to a sweep of its own.
/// </summary>
public sealed class MovablesAgainstSweepTests(ITestOutputHelper output)
{
    [Fact]
    public void Of_rooms_with_open_measures_few_do_better_with_them_settled_on_a_grid()
    {
        var (behind, rooms, ahead) = (new ConcurrentBag<string>(), 0, 0);
        var ms = 0L; MovableRoom.Any(1, 2).EachDear(room =>
        {
            var job = room.Open();
            if (JobCheck.Check(job).Count > 0) return;
            var clock = System.Diagnostics.Stopwatch.StartNew();
            var mine = Planner.Plan(job).Runs[0].Best.Score;
            var order = new ScoreOrder(ScoreOrder.Usual);
            Interlocked.Add(ref ms, clock.ElapsedMilliseconds); Score? swept = null;
            foreach (var settled in room.Settled(9))
            {
                var ready = JobCheck.Steps(settled).Last()!;
                if (ready.Faults.Count > 0) continue;
                var score = LineSearch.Find(JobRuns.Problem(settled, settled.Runs[0], ready.Runs[0].Faces)).Best.Score;
                if (swept is not { } best || order.Compare(score, best) < 0) swept = score;
            }

            Interlocked.Increment(ref rooms);
            var by = order.Compare(mine with { Tiles = 0 }, swept!.Value with { Tiles = 0 });
            if (by < 0) Interlocked.Increment(ref ahead);
            if (by > 0) behind.Add(string.Create(CultureInfo.InvariantCulture, $"{order.FirstDifference(mine, swept.Value)}: {mine} / {swept} / {room.Bond} {string.Join(' ', room.Asked)} {string.Join(' ', room.Range)} {room.Studs}"));
        }, 60);
        output.WriteLine($"{ms} ms {rooms} rooms, ahead of the grid in {ahead}, behind in {behind.Count}\n{string.Join('\n', behind)}");
        Assert.Empty(behind);
    }
}
