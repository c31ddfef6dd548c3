using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>Which part of a face is set.</summary>
public enum SetStage
{
    /// <summary>No part: it is another task.</summary>
    None,

    /// <summary>From the starting line up; of a floor all of it.</summary>
    Up,

    /// <summary>The cut course below a level line, when what held up the one above it is off.</summary>
    Below,

    /// <summary>What waits for something made elsewhere.</summary>
    Waiting,
}

/// <summary>A task waits for another.</summary>
/// <param name="Task">For which.</param>
/// <param name="Minutes">How long after its end, in minutes of elapsed time.</param>
/// <param name="Hold">For what; null where it only comes after it.</param>
/// <param name="From">Who says how long.</param>
/// <param name="Product">The product that says it; null for none.</param>
/// <param name="Until">When the wait ends, as the clock then shows; null where it has no date.</param>
public sealed record WorkWait(string Task, int Minutes, HoldKind? Hold, HoldFrom From, string? Product, DateTime? Until)
{
    /// <summary>What is printed of such holds; null where nothing is known here.</summary>
    public PublishedHold? Published => Hold is { } kind ? PublishedHolds.Of(kind) : null;
}

/// <summary>When a task is worked at on one day, as the clock shows it, breaks among it.</summary>
/// <param name="Begins">From when.</param>
/// <param name="Ends">Until when.</param>
public readonly record struct WorkStretch(DateTime Begins, DateTime Ends);

/// <summary>A task, and when it is done.</summary>
/// <param name="Name">Its name, unique.</param>
/// <param name="Kind">What it is.</param>
public sealed record WorkTask(string Name, WorkKind Kind)
{
    /// <summary>The run it belongs to; null for none.</summary>
    public string? Run { get; init; }

    /// <summary>The faces it is done on; default none.</summary>
    public Sequence<string> Faces { get; init; } = [];

    /// <summary>Which part of a face is set.</summary>
    public SetStage Stage { get; init; }

    /// <summary>What made elsewhere it waits for, by that thing's name; null, the default, for nothing.</summary>
    public string? Awaits { get; init; }

    /// <summary>How much there is to do, by all it may be counted by.</summary>
    public Sequence<WorkAmount> Amounts { get; init; } = [];

    /// <summary>How long it takes, in minutes of work; null where nobody gives a pace: then it takes none.</summary>
    public int? Minutes { get; init; }

    /// <summary>How many hands it takes; 0 where others do it or nobody does.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>Whether it is done in one day where it fits one: what is mixed is not left for the morning.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Whether it comes of itself, at any hour.</summary>
    public bool IsEvent => Kind is WorkKind.Arrival or WorkKind.FirstUse;

    /// <summary>When it begins, as the clock shows; null where no date was found.</summary>
    public DateTime? Begins { get; init; }

    /// <summary>When it ends.</summary>
    public DateTime? Ends { get; init; }

    /// <summary>When it is worked at, day by day.</summary>
    public Sequence<WorkStretch> Days { get; init; } = [];

    /// <summary>What it waits for.</summary>
    public Sequence<WorkWait> Waits { get; init; } = [];

    /// <summary>Tasks that may be done at the same time, had one the hands.</summary>
    public Sequence<string> Beside { get; init; } = [];

    /// <summary>Pieces that are set in this task alone, where it is said which. Default none.</summary>
    public Sequence<string> Pieces { get; init; } = [];

    /// <summary>What is mixed for it, and what each mix covers. Default none.</summary>
    public Sequence<Batch> Batches { get; init; } = [];

    /// <summary>How many tiles may be combed for ahead within the mortar's open time; null where that is not known.</summary>
    public int? Ahead { get; init; }
}

/// <summary>The order of work.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Tasks">The tasks in the order in which they begin; those without a date last.</param>
public sealed record WorkPlan(WorkRequest Request, Sequence<WorkTask> Tasks);
