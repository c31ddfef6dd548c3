using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine;

/// <summary>Something in a job that cannot be used. Faults are gathered and said together.</summary>
/// <param name="Path">Where in the job, as in its file: <c>faces[1].openings[0].width</c>; empty for the job as a whole.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What could stand there.</param>
/// <param name="Nearest">The nearest thing that would do; null when there is none.</param>
public sealed record Fault(string Path, string Found, string Expected, string? Nearest = null)
{
    /// <summary>What to put into the job so that it has what <see cref="Nearest"/> says and this fault no more; none where that is advice only.</summary>
    public Sequence<Mend> Mends { get; init; } = [];
}

/// <summary>A value to be put into a job in place of what stands there.</summary>
/// <param name="Path">Where in the job, as in its file.</param>
/// <param name="Value">The value as the file would say it: <c>45</c>, <c>"98 mm"</c> with its quotes, <c>null</c> for nothing.</param>
public sealed record Mend(string Path, string Value)
{
    /// <summary>A length that is read as the same length again.</summary>
    public static Mend Of(string path, Length length, Tape tape) => new(path, $"\"{LengthText.Exact(length, tape)}\"");

    /// <summary>Two lengths in a list, the least and the most or across and up.</summary>
    public static Mend Of(string path, Length one, Length other, Tape tape) => new(path, $"[{Of(path, one, tape).Value}, {Of(path, other, tape).Value}]");

    /// <summary>A word or a name in its quotes.</summary>
    public static Mend Of(string path, string word) => new(path, $"\"{word.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"");
}
