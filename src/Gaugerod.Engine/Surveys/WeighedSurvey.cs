using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>A survey with every reading weighed against the others.</summary>
/// <param name="Face">The face.</param>
/// <param name="Corners">Where its corners and other spots came to stand.</param>
/// <param name="Readings">What became of each reading, in the survey's order.</param>
/// <param name="Sides">How long each side came out, and how sure that is.</param>
/// <param name="Beyond">How many readings there are beyond what settles the shape; of all faces weighed together.</param>
public sealed record WeighedSurvey(string Face, Sequence<PlacedSpot> Corners, Sequence<WeighedReading> Readings, Sequence<SureLength> Sides, int Beyond)
{
    /// <summary>What had to be taken for granted, such as <c>a square corner at B</c>; default nothing.</summary>
    public Sequence<string> Assumed { get; init; } = [];

    /// <summary>The faces whose readings were weighed with these, since sides are shared; default none.</summary>
    public Sequence<string> With { get; init; } = [];

    /// <summary>What else may be in error, beside <see cref="Suspects"/>, in words: readings of those faces, a side wrongly taken for another.</summary>
    public Sequence<string> Elsewhere { get; init; } = [];

    /// <summary>The readings of which one must be in error, as nothing tells which; none where all agree within their accuracy.</summary>
    public Sequence<int> Suspects { get; init; } = [];

    /// <summary>What to read next, in words: to tell the suspects apart, to settle what was assumed, or to check what nothing checks. Empty where there is nothing.</summary>
    public string Next { get; init; } = "";

    /// <summary>The same as a reading that waits to be taken, of no length yet; null where there is nothing.</summary>
    public SurveyReading? Asked { get; init; }
}

/// <summary>A corner or a spot where it came to stand.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Place">Where, from the first corner.</param>
public sealed record PlacedSpot(string Name, Point Place);

/// <summary>A length and how sure it is.</summary>
/// <param name="Said">What it is of, such as <c>A to B</c>.</param>
/// <param name="Value">The length.</param>
/// <param name="Deviation">Its standard deviation.</param>
public sealed record SureLength(string Said, Length Value, Length Deviation);

/// <summary>What became of a reading.</summary>
/// <param name="Said">What was read, in words, such as <c>A to C</c>.</param>
/// <param name="Read">What it said.</param>
/// <param name="Adjusted">What it comes to beside all the others.</param>
/// <param name="Deviation">The standard deviation of that.</param>
/// <param name="Redundancy">How much of a slip in it would show in itself: 0, nothing checks it, to 1.</param>
/// <param name="Standardised">Its correction by the correction's own standard deviation; beyond 3.29 it is doubted. 0 where nothing checks it.</param>
public sealed record WeighedReading(string Said, Length Read, Length Adjusted, Length Deviation, double Redundancy, double Standardised)
{
    /// <summary>What it should be by all the others; null where nothing checks it.</summary>
    public Length? ByOthers { get; init; }
}
