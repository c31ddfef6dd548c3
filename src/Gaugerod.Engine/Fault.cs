namespace Gaugerod.Engine;

/// <summary>Something in a job that cannot be used. Faults are gathered and said together.</summary>
/// <param name="Path">Where in the job, as in its file: <c>faces[1].openings[0].width</c>; empty for the job as a whole.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What could stand there.</param>
/// <param name="Nearest">The nearest thing that would do; null when there is none.</param>
public sealed record Fault(string Path, string Found, string Expected, string? Nearest = null);
