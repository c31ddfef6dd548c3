using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Names that must differ from each other.</summary>
/// <param name="among">Among what, in words: <c>the faces</c>.</param>
/// <param name="parts">Whether these names take a part after a full stop, as <c>window.bottom</c>, and may hold none themselves.</param>
/// <param name="taken">Names that are taken from the start.</param>
internal sealed class Uniques(string among, bool parts, params string[] taken)
{
    private readonly HashSet<string> _taken = new(taken, StringComparer.Ordinal);

    /// <summary>What two names that are held to be one have in common; the name itself, where only the same letters are.</summary>
    public Func<string, string> Alike { get; init; } = name => name;

    /// <summary>Takes a name that stands for no entry.</summary>
    public void Reserve(string name) => _taken.Add(Alike(name));

    /// <summary>Whether a name is taken, or is none of these for its full stop.</summary>
    public bool Refuses(string name) => _taken.Contains(Alike(name)) || (parts && name.Contains('.', StringComparison.Ordinal));

    /// <summary>Reads a name and takes it; null, and a fault, when it is no name or is taken.</summary>
    public string? Take(Entry? entry, Values values)
    {
        if (values.Name(entry) is not { } name) return null;
        if (parts && name.Contains('.', StringComparison.Ordinal))
        {
            values.Log.Add(entry!, "a name without a full stop, which stands before an edge's name", Values.Quoted(name.Replace(".", "", StringComparison.Ordinal)));
            return null;
        }

        if (_taken.Add(Alike(name))) return name;
        values.Log.AddSaid(entry!, $"\"{name}\", which is taken", $"a name of its own among {among}", Values.Quoted(name + " 2"));
        return name;
    }
}
