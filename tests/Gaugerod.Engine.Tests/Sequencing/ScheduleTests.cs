using Gaugerod.Engine.Sequencing;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>Orders of work against a walk through their time minute by minute.</summary>
public sealed class ScheduleTests
{
    [Fact]
    public void No_task_begins_before_its_holds_end_or_is_done_out_of_hours_and_no_hand_is_in_two_places() => RandomWork.Jobs.Each(Held, 2000);

    private static void Held(RandomWork work)
    {
        var (plan, walk) = (work.Plan(), new WalkedWork(work.Request.Hours));
        var by = plan.Tasks.ToDictionary(task => task.Name, StringComparer.Ordinal);
        Assert.Equal(work.Tasks.Count, by.Count);
        var (begins, ends, busy) = (new long[by.Count], new long[by.Count], new Dictionary<long, int>());
        var begin = walk.At(work.Request.Hours.Start.ToDateTime(TimeOnly.MinValue))[0];
        for (var i = 0; i < by.Count; i++)
        {
            var (task, asked) = (by[RandomWork.Name(i)], work.Tasks[i]);
            Assert.True(task.Begins is not null && task.Ends is not null, $"{task.Name} has no day.");
            (begins[i], ends[i]) = Place(walk, work, task, [.. work.Waits.Where(wait => wait.To == i).Select(wait => ends[wait.From] + wait.Minutes)], begin);
            if (asked.Minutes is not ({ } minutes and > 0)) continue;
            var worked = 0;
            for (var at = begins[i]; at < ends[i]; at++)
            {
                if (!walk.IsWorked(at)) continue;
                worked++;
                if (asked.Hands > 0) busy[at] = busy.GetValueOrDefault(at) + asked.Hands;
            }

            Assert.Equal((task.Name, minutes), (task.Name, worked));
            Assert.True(walk.IsWorked(begins[i]) && walk.IsWorked(ends[i] - 1), $"{task.Name} begins or ends out of hours.");
            Assert.Equal(minutes, task.Days.Sum(day => Within(walk, day, begins[i], ends[i])));
        }

        Assert.All(busy.Values, hands => Assert.True(hands <= work.Request.Hands));
        for (var i = 0; i < by.Count; i++) NotEarlier(work, walk, busy, begins, ends, begin, i);
    }

    // Where a clock shows a time twice, the later moment is meant if the first is too early.
    private static (long Begins, long Ends) Place(WalkedWork walk, RandomWork work, WorkTask task, long[] releases, long start)
    {
        var release = releases.Append(start).Max();
        var (first, last) = (walk.At(task.Begins!.Value), walk.At(task.Ends!.Value));
        Assert.NotEmpty(first);
        Assert.NotEmpty(last);
        var ways = from one in first from other in last where other >= one && one >= release orderby one, other select (one, other);
        Assert.True(ways.Any(), $"{task.Name} begins before what it waits for.");
        if (task.Minutes is not ({ } minutes and > 0)) return ways.First();
        return ways.FirstOrDefault(way => Count(walk, way.one, way.other) == minutes, ways.First());
    }

    private static int Count(WalkedWork walk, long from, long to)
    {
        var worked = 0;
        for (var at = from; at < to; at++) worked += walk.IsWorked(at) ? 1 : 0;
        return worked;
    }

    private static int Within(WalkedWork walk, WorkStretch day, long begins, long ends)
    {
        var ways = from one in walk.At(day.Begins) from other in walk.At(day.Ends) where one >= begins && other <= ends && one < other select Count(walk, one, other);
        return ways.Max();
    }

    /// <summary>No task begins later than its waits and the hands make it, not even a minute of work; what is done in one day may wait for a day that holds it.</summary>
    private static void NotEarlier(RandomWork work, WalkedWork walk, Dictionary<long, int> busy, long[] begins, long[] ends, long start, int task)
    {
        var asked = work.Tasks[task];
        if (asked.Minutes is not ({ } minutes and > 0)) return;
        var release = work.Waits.Where(wait => wait.To == task).Select(wait => ends[wait.From] + wait.Minutes).Append(start).Max();
        for (var at = begins[task] - 1; at >= release; at--)
        {
            if (!walk.IsWorked(at)) continue;
            var isBusy = asked.Hands > 0 && busy.GetValueOrDefault(at) + asked.Hands > work.Request.Hands;
            var (left, next) = asked.IsWhole && !isBusy ? walk.Around(at) : (minutes, 0);
            Assert.True(isBusy || (left < minutes && minutes <= next), $"{RandomWork.Name(task)} might begin a minute earlier.");
            return;
        }
    }
}
