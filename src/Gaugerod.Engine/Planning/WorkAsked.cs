using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>A wait that closes a loop, and the tasks round it.</summary>
/// <param name="Path">Where it was asked for.</param>
/// <param name="Round">The tasks, each before the next, the first again at the end.</param>
internal sealed record WorkLoop(string Path, Sequence<string> Round);

/// <summary>What the user adds: tasks of his own, and what is made elsewhere.</summary>
internal sealed class WorkAsked(WorkMaking making, List<int> own, List<int> arrivals)
{
    private readonly List<WorkLoop> _loops = [];
    private readonly List<(string Path, string Name)> _absent = [];

    /// <summary>Waits that close a loop; they are left out.</summary>
    public IReadOnlyList<WorkLoop> Loops => _loops;

    /// <summary>Names of tasks that the job does not come to.</summary>
    public IReadOnlyList<(string Path, string Name)> Absent => _absent;

    /// <summary>The places of the user's own tasks, before the others: he names them because they press.</summary>
    public static List<int> Own(WorkMaking making) => making.Asked.Tasks.Select(task => making.Add(new(task.Name, WorkKind.Own) { Minutes = task.Minutes, Hands = task.Hands })).ToList();

    /// <summary>The places of what comes in.</summary>
    public static List<int> Arrivals(WorkMaking making) => making.Asked.Made.Select(made => making.Add(new(TaskNames.In(made.Name), WorkKind.Arrival) { Hands = 0, Minutes = 0, Faces = made.Faces, Pieces = made.Pieces })).ToList();

    /// <summary>Adds what they ask for.</summary>
    public void Link()
    {
        for (var i = 0; i < own.Count; i++)
        {
            var task = making.Asked.Tasks[i];
            Each(task.After, i, "tasks", "after", (other, path) => Link(other, own[i], path, HoldOf(other)));
            Each(task.Before, i, "tasks", "before", (other, path) => Link(own[i], other, path, HoldOf(own[i])));
        }

        for (var i = 0; i < arrivals.Count; i++)
        {
            var (made, at) = (making.Asked.Made[i], arrivals[i]);
            if (made.After is { } from) Each([from], i, "made", "after", (other, path) => Link(other, at, path, (made.Lead, HoldKind.Lead)));
            else making.Graph.Link(new(Start(), at, made.Lead, HoldKind.Lead, HoldFrom.Job, null));
            Each(made.Faces.Select(TaskNames.Set), i, "made", "faces", (other, path) => Link(at, other, path, default));
            Each(made.Before, i, "made", "before", (other, path) => Link(at, other, path, default));
            foreach (var waiting in Places(task => string.Equals(task.Awaits, made.Name, StringComparison.Ordinal))) making.Graph.Link(new(at, waiting, 0, null, HoldFrom.None, null));
        }
    }

    /// <summary>The tasks a name stands for: one, or all of a kind.</summary>
    private IEnumerable<int> Called(string name)
    {
        var one = Places(task => string.Equals(task.Name, name, StringComparison.Ordinal)).ToList();
        return one.Count > 0 ? one : Places(task => task.Kind != WorkKind.Own && string.Equals(TaskNames.Word(task.Kind), name, StringComparison.Ordinal));
    }

    private IEnumerable<int> Places(Func<WorkTask, bool> are) => Enumerable.Range(0, making.Graph.Tasks.Count).Where(at => are(making.Graph.Tasks[at]));

    // A moment before all work, for what is ordered before it begins.
    private int Start()
    {
        var known = Places(task => task.Kind == WorkKind.Arrival && string.Equals(task.Name, TaskNames.Start, StringComparison.Ordinal)).ToList();
        return known.Count > 0 ? known[0] : making.Graph.Add(new(TaskNames.Start, WorkKind.Arrival) { Hands = 0, Minutes = 0 });
    }

    private (int Minutes, HoldKind? Hold) HoldOf(int first) => own.IndexOf(first) is >= 0 and var at && making.Asked.Tasks[at].Hold is > 0 and var minutes ? (minutes, HoldKind.Own) : (0, null);

    private void Each(IEnumerable<string> names, int index, string list, string field, Action<int, string> link)
    {
        var place = 0;
        foreach (var name in names)
        {
            var path = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"work.{list}[{index}].{field}{(string.Equals(list, "made", StringComparison.Ordinal) && string.Equals(field, "after", StringComparison.Ordinal) ? "" : $"[{place}]")}");
            var called = Called(name).ToList();
            if (called.Count == 0) _absent.Add((path, name));
            foreach (var other in called) link(other, path);
            place++;
        }
    }

    private void Link(int from, int to, string path, (int Minutes, HoldKind? Hold) hold)
    {
        if (making.Graph.Way(to, from) is { } round) _loops.Add(new(path, round.Append(to).Select(at => making.Graph.Tasks[at].Name).ToSequence()));
        else making.Graph.Link(new(from, to, hold.Minutes, hold.Hold, hold.Hold is null ? HoldFrom.None : HoldFrom.Job, null));
    }
}
