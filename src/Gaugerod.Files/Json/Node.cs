using System.Globalization;

namespace Gaugerod.Files.Json;

/// <summary>A value in a file that knows where it stands.</summary>
/// <param name="parent">The group or list it is in; null for the outermost.</param>
/// <param name="step">How its parent calls it: <c>.width</c> or <c>[3]</c>.</param>
/// <param name="at">The offset of its first byte.</param>
internal abstract class Node(Node? parent, string step, int at)
{
    public int At { get; } = at;

    /// <summary>The offset after its last byte; of a group or list, after its opening bracket.</summary>
    public int End { get; set; }

    public string Path => parent is null ? step : Joined(parent.Path, step);

    public string PathTo(string field) => Joined(Path, "." + field);

    public static string StepOf(int index) => string.Create(CultureInfo.InvariantCulture, $"[{index}]");

    private static string Joined(string path, string step) => path.Length == 0 ? step.TrimStart('.') : path + step;

    internal sealed class Text(Node? parent, string step, int at, string value) : Node(parent, step, at)
    {
        public string Value { get; } = value;
    }

    internal sealed class Number(Node? parent, string step, int at, string value) : Node(parent, step, at)
    {
        /// <summary>The number as it was written.</summary>
        public string Value { get; } = value;
    }

    internal sealed class Truth(Node? parent, string step, int at, bool value) : Node(parent, step, at)
    {
        public bool Value { get; } = value;
    }

    internal sealed class Nothing(Node? parent, string step, int at) : Node(parent, step, at);

    internal sealed class List(Node? parent, string step, int at) : Node(parent, step, at)
    {
        public List<Node> Items { get; } = [];
    }

    internal sealed class Group(Node? parent, string step, int at) : Node(parent, step, at)
    {
        public Dictionary<string, Member> Members { get; } = new(StringComparer.Ordinal);
    }

    /// <summary>A field of a group.</summary>
    /// <param name="NameAt">The offset of its name.</param>
    /// <param name="Value">Its value.</param>
    internal readonly record struct Member(int NameAt, Node Value);
}
