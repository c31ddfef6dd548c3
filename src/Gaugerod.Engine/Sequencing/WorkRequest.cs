using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>How a kind of work goes from the user's hand.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Pace">How quickly.</param>
public readonly record struct KindPace(WorkKind Kind, Pace Pace);

/// <summary>A task that the user adds.</summary>
/// <param name="Name">Its name, unique among the tasks.</param>
/// <param name="Minutes">How long it takes; zero or more.</param>
/// <param name="After">What comes before it: tasks, or kinds of work.</param>
/// <param name="Before">What has to wait for it.</param>
public sealed record OwnTask(string Name, int Minutes, Sequence<string> After, Sequence<string> Before)
{
    /// <summary>How many hands it takes, 0 to 4: none where others do it. Default one.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>How long what comes after it waits, in minutes of elapsed time. Default none.</summary>
    public int Hold { get; init; }
}

/// <summary>Something that is made elsewhere: a slab, glass.</summary>
/// <param name="Name">Its name, unique among the tasks.</param>
/// <param name="Lead">How long it takes to come, in minutes of elapsed time.</param>
/// <param name="After">The task it is counted from, a template or an order; null for the first day.</param>
/// <param name="Faces">Faces that are not set before it is in.</param>
/// <param name="Pieces">Pieces that are not set before.</param>
/// <param name="Before">Other tasks that wait for it.</param>
public sealed record MadeElsewhere(string Name, int Lead, string? After, Sequence<string> Faces, Sequence<string> Pieces, Sequence<string> Before);

/// <summary>What is asked of the order of work.</summary>
/// <param name="Hours">When work is done.</param>
public sealed record WorkRequest(WorkHours Hours)
{
    /// <summary>How many people work, 1 to 4. Default one.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>Whether floors are tiled before walls. Default after them.</summary>
    public bool FloorFirst { get; init; }

    /// <summary>Faces that are floors, beside those that fall or whose flatness was read as a floor's. Default none.</summary>
    public Sequence<string> Floors { get; init; } = [];

    /// <summary>How quickly the user works, by kind. Default nothing: what has no pace takes no time in the calendar.</summary>
    public Sequence<KindPace> Paces { get; init; } = [];

    /// <summary>How many cuts he makes in an hour; null, the default, where cutting takes no time of its own.</summary>
    public Pace? Cutting { get; init; }

    /// <summary>Holds for all products that say none themselves. Default none.</summary>
    public Sequence<HoldTime> Holds { get; init; } = [];

    /// <summary>How many coats of membrane are put on, 0 to 9. Default none.</summary>
    public int Coats { get; init; }

    /// <summary>How long the water of a flood test stands, in minutes; null, the default, for no test.</summary>
    public int? Flood { get; init; }

    /// <summary>Tasks of the user's own. Default none.</summary>
    public Sequence<OwnTask> Tasks { get; init; } = [];

    /// <summary>What is made elsewhere. Default none.</summary>
    public Sequence<MadeElsewhere> Made { get; init; } = [];

    /// <summary>How quickly a kind of work goes; null where it is not said.</summary>
    public Pace? PaceOf(WorkKind kind) => Paces.Where(pace => pace.Kind == kind).Select(pace => (Pace?)pace.Pace).FirstOrDefault();
}
