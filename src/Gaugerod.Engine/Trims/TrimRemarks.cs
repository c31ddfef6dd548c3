using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Gathers what is to be said of trims that do not agree, or cannot be had as asked.</summary>
internal sealed class TrimRemarks(Tape tape)
{
    private const string NoSource = "common practice, no source";

    // Nearer than this, and not in line, a joint looks like a slip.
    internal static readonly Length Slip = Length.FromInches(0, 1, 2);

    private readonly List<Finding> _findings = [];

    public IReadOnlyList<Finding> Findings => _findings;

    public Tape Tape => tape;

    public string Say(Length length) => LengthText.Nearest(length, tape);

    public void Add(FindingLevel level, string rule, string where, string text, string limit = "", string value = "")
    {
        var finding = new Finding(level, rule, where, text, limit, value, NoSource);
        if (!_findings.Contains(finding)) _findings.Add(finding);
    }

    public void RoundEdge(string face, string edge) => Add(
        FindingLevel.Warn, "trim", $"{face}, {edge}", "This edge is round: its trim is not planned. Bend a bar to it, or set short pieces to a template.");

    /// <summary>Strips of two walls that meet at different heights.</summary>
    public void Heights(Strip one, Strip next, Length height, Length other)
    {
        if ((height - other).Abs() <= tape.Mark) return;
        Add(
            FindingLevel.Warn, "trim-corner", $"{one.Face.Face.Name}, {one.Edge.Name} and {next.Face.Face.Name}, {next.Edge.Name}",
            $"The trims meet at the corner {Say((height - other).Abs())} apart in height.", $"within {Say(tape.Mark)}", Say((height - other).Abs()));
    }

    /// <summary>A joint so near to one of the field that it looks like a slip.</summary>
    public void Slipped(string where, Length? stagger)
    {
        if (stagger is not { } off || off.Steps * 2 <= tape.Mark.Steps || off >= Slip) return;
        Add(FindingLevel.Note, "trim-joints", where, $"A joint of the trim stands {Say(off)} off a joint of the field: neither in line nor staggered.", $"in line, or {Say(Slip)} off", Say(off));
    }
}
