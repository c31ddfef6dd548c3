using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Sequencing;

/// <summary>A task that comes before another.</summary>
/// <param name="From">The place of the one that comes first.</param>
/// <param name="To">The place of the other.</param>
/// <param name="Minutes">How long after its end, in minutes of elapsed time.</param>
/// <param name="Hold">For what; null where it only comes after it.</param>
/// <param name="Source">Who says how long.</param>
/// <param name="Product">The product that says it; null for none.</param>
internal readonly record struct WorkLink(int From, int To, int Minutes, HoldKind? Hold, HoldFrom Source, string? Product);

/// <summary>Tasks in the trade's order, and which waits for which.</summary>
internal sealed class WorkGraph
{
    private readonly List<WorkTask> _tasks = [];
    private readonly List<WorkLink> _links = [];
    private readonly List<List<int>> _after = [];
    private readonly Dictionary<int, Mixing> _mixing = [];

    public IReadOnlyList<WorkTask> Tasks => _tasks;

    public IReadOnlyList<WorkLink> Links => _links;

    /// <summary>What is mixed for tasks, by their places.</summary>
    public IReadOnlyDictionary<int, Mixing> Mixings => _mixing;

    public int Add(WorkTask task)
    {
        _tasks.Add(task);
        _after.Add([]);
        return _tasks.Count - 1;
    }

    /// <summary>Says what is mixed for a task.</summary>
    public void Mix(int task, Mixing mixing) => _mixing[task] = mixing;

    public void Link(WorkLink link)
    {
        _links.Add(link);
        _after[link.From].Add(link.To);
    }

    /// <summary>Whether one comes before another, at once or by way of others.</summary>
    public bool Reaches(int from, int to) => Way(from, to) is not null;

    /// <summary>The tasks from one to another, both among them; null where there is no way.</summary>
    public IReadOnlyList<int>? Way(int from, int to)
    {
        var (before, waiting) = (new Dictionary<int, int> { [from] = -1 }, new Queue<int>([from]));
        while (waiting.TryDequeue(out var at))
        {
            if (at == to)
            {
                var way = new List<int>();
                for (var step = to; step >= 0; step = before[step]) way.Insert(0, step);
                return way;
            }

            foreach (var next in _after[at])
            {
                if (before.TryAdd(next, at)) waiting.Enqueue(next);
            }
        }

        return null;
    }

    /// <summary>Whether each of two tasks comes after the other, for all of them: the one at a place by the row of another.</summary>
    public bool[][] Behind()
    {
        var behind = new bool[_tasks.Count][];
        for (var from = 0; from < _tasks.Count; from++)
        {
            var (reached, waiting) = (new bool[_tasks.Count], new Stack<int>([from]));
            while (waiting.TryPop(out var at))
            {
                foreach (var next in _after[at])
                {
                    if (reached[next]) continue;
                    reached[next] = true;
                    waiting.Push(next);
                }
            }

            behind[from] = reached;
        }

        return behind;
    }
}
