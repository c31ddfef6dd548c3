using Gaugerod.Engine;
using Gaugerod.Plane;

namespace Gaugerod.Files;

/// <summary>Something in a file that cannot be used, and where it stands.</summary>
/// <param name="File">The file's name, as it was given.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Column">The character in the line, counted from 1.</param>
/// <param name="Path">Where in the job: <c>faces[1].openings[0].width</c>; empty for the file as a whole.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What could stand there.</param>
/// <param name="Nearest">The nearest thing that would do; null when there is none.</param>
public sealed record FileFault(string File, int Line, int Column, string Path, string Found, string Expected, string? Nearest)
{
    /// <summary>What to put into the file so that it has what <see cref="Nearest"/> says and this fault no more; none where that is advice only.</summary>
    public Sequence<Mend> Mends { get; init; } = [];

    /// <summary>The fault as one message for a person.</summary>
    public string Say()
    {
        var line = Line.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var where = Path.Length == 0 ? $"{File}:{line}" : $"{File}:{line}: {Path}";
        var nearest = Nearest is null ? "" : $" Nearest: {Nearest}.";
        return $"{where}: found {Found}, expected {Expected}.{nearest}";
    }

    /// <inheritdoc />
    public override string ToString() => Say();
}
