using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What a whole course stands on while the cut course below it is not yet there, and what is minded of it: one wording for sheets, order of work and findings.</summary>
public static class BattenWords
{
    private const string NoScrew = "No screw through a waterproofed face";

    /// <summary>The usual caution. Common practice, no source.</summary>
    private const string Caution = $"Before you screw, find out what is behind the wall: pipes, cables. {NoScrew}: prop the batten from below.";

    /// <summary>What to do on the walls of a run; null where none of them takes a batten, as no floor does.</summary>
    /// <param name="job">The job: it tells floors from walls, and which walls carry a membrane.</param>
    /// <param name="run">The run.</param>
    public static string? Of(Job job, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(run);
        var battens = BattenSupplies.Along(job, run).ToList();
        if (battens.Count == 0) return null;
        var (propped, screwed) = (battens.Where(batten => IsPropped(job, run, batten)).Select(batten => batten.Face).ToList(), battens.Where(batten => !IsPropped(job, run, batten)).Select(batten => batten.Face).ToList());
        var hold = (propped.Count, screwed.Count) switch
        {
            (0, _) => "Screw a straight batten along the line, its top edge on it,",
            (_, 0) => "Prop a straight batten from below, its top edge on the line,",
            _ => $"Screw a straight batten along the line on {NameList.Of(screwed)}, prop one from below on {NameList.Of(propped)}, its top edge on the line,",
        };
        return $"On {NameList.Of([.. battens.Select(batten => batten.Face)])} the course below a level line is cut. {hold} and set the whole course on that. "
            + "Take it off when the adhesive has set as its instructions say, usually the next day; then cut the course below to what is measured and set it last. "
            + $"{Mind(job, run, battens)}The instructions of board, membrane and adhesive come first.";
    }

    /// <summary>What the order of work says of it where a run's lines are marked; nothing of a run that takes none.</summary>
    internal static Sequence<string> AtLines(Job job, RunPlan run)
    {
        var battens = BattenSupplies.Along(job, run).ToList();
        if (battens.Count == 0) return [];
        var how = battens.TrueForAll(batten => IsPropped(job, run, batten)) ? ", propped from below," : "";
        return [$"Where the course below a level line is cut, a batten on the line{how} carries the first whole course. {Mind(job, run, battens)}".TrimEnd()];
    }

    /// <summary>What is said where screws are asked for on walls that carry a membrane.</summary>
    internal static string Through(IEnumerable<string> walls) =>
        $"The batten is screwed through the membrane of {string.Join(", ", walls)}: each screw is a hole in it. Prop it from below, or close every hole as the membrane's maker says.";

    private static string Mind(Job job, RunPlan run, List<Batten> battens)
    {
        if (battens.Exists(batten => !IsPropped(job, run, batten))) return $"{Caution} ";
        return battens.Exists(batten => BattenSupplies.HasMembrane(job, batten.Wall)) ? $"{NoScrew}. " : "";
    }

    private static bool IsPropped(Job job, RunPlan run, Batten batten) => run.Request.Setting?.Batten is { Screws: null } || BattenSupplies.HasMembrane(job, batten.Wall);
}
