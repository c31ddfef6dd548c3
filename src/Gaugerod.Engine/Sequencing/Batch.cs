using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>What one mix covers of a course.</summary>
/// <param name="Course">The course.</param>
/// <param name="First">The first piece of it, counted from 1 at its left.</param>
/// <param name="Last">The last.</param>
/// <param name="Of">How many pieces the course has.</param>
public readonly record struct BatchCourse(int Course, int First, int Last, int Of)
{
    /// <summary>The face, where a task goes over several; null, the default, where there is one.</summary>
    public string? Face { get; init; }

    /// <summary>Whether it is the whole course.</summary>
    public bool IsWhole => First == 1 && Last == Of;
}

/// <summary>What is mixed at one time.</summary>
/// <param name="Number">Its number in its task, from 1.</param>
/// <param name="Begins">When it is mixed, as the clock shows.</param>
/// <param name="Ends">When it is used up.</param>
/// <param name="Courses">What it covers.</param>
/// <param name="Pieces">How many pieces.</param>
/// <param name="Litres">How much it is, ready to use.</param>
/// <param name="Packs">How much of a pack that is; more than one where a single piece takes more.</param>
public sealed record Batch(int Number, DateTime Begins, DateTime Ends, Sequence<BatchCourse> Courses, int Pieces, double Litres, double Packs);
