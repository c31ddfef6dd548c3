using System.Globalization;

namespace Gaugerod.Files.Json;

/// <summary>A value in a file that knows where it stands.</summary>
/// <param name="parent">The group or list it is in; null for the outermost.</param>
/// <param name="step">How its parent calls it: <c>.width</c> or <c>[3]</c>.</param>
/// <param name="at">The offset of its first byte.</param>
internal abstract class Entry(Entry? parent, string step, int at)
{
    public int At { get; } = at;

    /// <summary>The offset after its last byte; of a group or list, after its opening bracket.</summary>
    public int End { get; set; }

    public string Path => parent is null ? step : Joined(parent.Path, step);

    /// <summary>The outermost value of the file.</summary>
    public Entry Root => parent?.Root ?? this;

    public string PathTo(string field) => Joined(Path, "." + field);

    public static string StepOf(int index) => string.Create(CultureInfo.InvariantCulture, $"[{index}]");

    private static string Joined(string path, string step) => path.Length == 0 ? step.TrimStart('.') : path + step;

    internal sealed class Text(Entry? parent, string step, int at, string value) : Entry(parent, step, at)
    {
        public string Value { get; } = value;
    }

    internal sealed class Number(Entry? parent, string step, int at, string value) : Entry(parent, step, at)
    {
        /// <summary>The number as it was written.</summary>
        public string Value { get; } = value;
    }

    internal sealed class Truth(Entry? parent, string step, int at, bool value) : Entry(parent, step, at)
    {
        public bool Value { get; } = value;
    }

    internal sealed class Nothing(Entry? parent, string step, int at) : Entry(parent, step, at);

    internal sealed class List(Entry? parent, string step, int at) : Entry(parent, step, at)
    {
        public List<Entry> Items { get; } = [];
    }

    internal sealed class Group(Entry? parent, string step, int at) : Entry(parent, step, at)
    {
        public Dictionary<string, Member> Members { get; } = new(StringComparer.Ordinal);
    }

    /// <summary>A field of a group.</summary>
    /// <param name="NameAt">The offset of its name.</param>
    /// <param name="Value">Its value.</param>
    internal readonly record struct Member(int NameAt, Entry Value);
}
