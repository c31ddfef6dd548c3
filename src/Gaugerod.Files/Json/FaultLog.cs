using System.Globalization;
using Gaugerod.Engine;
using Gaugerod.Plane;

namespace Gaugerod.Files.Json;

/// <summary>What is in doubt.</summary>
internal enum DoubtOf
{
    /// <summary>The unit of a fraction.</summary>
    Fraction,

    /// <summary>A name.</summary>
    Name,
}

/// <summary>What was read by the rule, but may have been meant otherwise.</summary>
/// <param name="Of">What is in doubt.</param>
/// <param name="Fault">Where it stands, what it is, and what was meant.</param>
internal sealed record Doubtful(DoubtOf Of, FileFault Fault);

/// <summary>Gathers the faults of one file, so that they can be said together.</summary>
internal sealed class FaultLog(string file, Source source)
{
    /// <summary>More than this many help nobody; a file of another kind would give thousands.</summary>
    public const int Most = 100;

    private const int LongestPart = 500;

    private readonly List<FileFault> _faults = [];
    private readonly List<Doubtful> _doubts = [];
    private bool _more;

    public Source Source { get; } = source;

    private readonly List<(int Line, string Path)> _passedOver = [];

    public bool Any => _faults.Count > 0;

    /// <summary>What was read by the rule, but may have been meant otherwise; in the file's order.</summary>
    public Sequence<FileFault> Doubts => Remarks.Select(doubt => doubt.Fault).ToSequence();

    /// <summary>The same with what they are about.</summary>
    public IEnumerable<Doubtful> Remarks => _doubts.OrderBy(doubt => doubt.Fault.Line).ThenBy(doubt => doubt.Fault.Column);

    /// <summary>Fields that are not known here, by line and path; in the file's order.</summary>
    public Sequence<(int Line, string Path)> PassedOver => _passedOver.Order().ToSequence();

    /// <summary>All of them in the file's order; where there are more than are kept, a last one says so.</summary>
    public Sequence<FileFault> Faults => [.. _faults.OrderBy(f => f.Line).ThenBy(f => f.Column), .. !_more ? (FileFault[])[] : [Located(0, "", string.Create(CultureInfo.InvariantCulture, $"more faults than these {Most}"), "these mended first; then the others are said", null)]];

    public void PassOver(int nameAt, string path)
    {
        if (_passedOver.Count < Most) _passedOver.Add((Source.PlaceOf(nameAt).Line, OneLine(path)));
    }

    public void Add(int offset, string path, string found, string expected, string? nearest = null, Sequence<Mend>? mends = null)
    {
        if (_faults.Count >= Most)
        {
            _more = true;
            return;
        }

        var fault = Located(offset, path, found, expected, nearest) with { Mends = mends ?? [] };
        if (!_faults.Contains(fault)) _faults.Add(fault);
    }

    /// <summary>A value that cannot stand where it does; the nearest, where there is one, as it would be written there: a length may do without quotes.</summary>
    public void Add(Entry entry, string expected, string? nearest = null) =>
        Add(entry.At, entry.Path, Shown(entry), expected, nearest, nearest is null ? [] : [Mended(entry.Path, nearest)]);

    /// <summary>A value that cannot stand where it does, in other words than its own.</summary>
    /// <param name="entry">The value.</param>
    /// <param name="found">What stands there, in words.</param>
    /// <param name="expected">What could stand there.</param>
    /// <param name="nearest">What would do, in words.</param>
    /// <param name="mends">What to put for that; none where the words are advice only.</param>
    public void AddSaid(Entry entry, string found, string expected, string? nearest = null, Sequence<Mend>? mends = null) => Add(entry.At, entry.Path, found, expected, nearest, mends);

    public void Doubt(Entry entry, DoubtOf of, string found, string expected, string? nearest)
    {
        if (_doubts.Count >= Most) return;
        var doubt = new Doubtful(of, Located(entry.At, entry.Path, found, expected, nearest));
        if (!_doubts.Contains(doubt)) _doubts.Add(doubt);
    }

    public FileFault Located(int offset, string path, string found, string expected, string? nearest)
    {
        var place = Source.PlaceOf(offset);
        return new(file, place.Line, place.Column, OneLine(path), OneLine(found), OneLine(expected), nearest is null ? null : OneLine(nearest));
    }

    public string Shown(Entry entry) => entry switch
    {
        Entry.Group { Members.Count: 0 } => "an empty group { }",
        Entry.Group group => $"a group {{ {string.Join(", ", group.Members.Keys.Take(3).Select(name => $"\"{name}\""))}{(group.Members.Count > 3 ? ", ..." : "")} }}",
        Entry.List { Items.Count: 0 } => "an empty list [ ]",
        Entry.List list => string.Create(CultureInfo.InvariantCulture, $"a list of {list.Items.Count}"),
        _ => Source.Shown(entry.At, entry.End),
    };

    private static Mend Mended(string path, string nearest) => nearest[0] is '"' or '{' or '[' || decimal.TryParse(nearest, NumberStyles.Float, CultureInfo.InvariantCulture, out _) || nearest is "true" or "false"
        ? new(path, nearest)
        : Mend.Of(path, nearest);

    // A message is one line, whatever names the file makes up.
    private static string OneLine(string text)
    {
        var plain = string.Concat(text.Take(LongestPart).Select(c => char.IsControl(c) ? ' ' : c));
        return text.Length > LongestPart ? plain + "..." : plain;
    }
}
