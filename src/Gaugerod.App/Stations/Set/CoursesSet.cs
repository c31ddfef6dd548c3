namespace Gaugerod.App.Stations.Set;

/// <summary>Which courses of a face are set. They stand on one another, so it is all from one course to another.</summary>
/// <param name="From">The first, counted as the plan's courses are.</param>
/// <param name="To">The last; less than the first for none.</param>
internal readonly record struct CoursesSet(int From, int To)
{
    public bool None => To < From;

    public int Count => None ? 0 : To - From + 1;

    public bool Holds(int course) => course >= From && course <= To;

    /// <summary>With a course set, and what it stands on from the starting line up.</summary>
    /// <param name="course">The course.</param>
    /// <param name="start">The course on the starting line.</param>
    public CoursesSet With(int course, int start) =>
        None ? new(Math.Min(start, course), course) : new(Math.Min(From, course), Math.Max(To, course));

    /// <summary>Without a course, nor what was set after it: above the starting line what stands on it, below the line what hangs from it.</summary>
    public CoursesSet Without(int course, int start) =>
        course < start && start <= To ? this with { From = course + 1 } : this with { To = course - 1 };
}
