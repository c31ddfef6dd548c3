namespace Gaugerod.Engine;

/// <summary>How much a finding matters.</summary>
public enum FindingLevel
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>Outside a limit that the setter may choose to pass.</summary>
    Warn,

    /// <summary>Not to be built as it stands.</summary>
    Stop,
}

/// <summary>The result of a check. It says what the limit is and whether the numbers meet it, never that something is safe.</summary>
/// <param name="Level">How much it matters.</param>
/// <param name="Rule">The rule's short name, such as <c>offset</c>.</param>
/// <param name="Where">What it is about: a run, a face, an edge, a product.</param>
/// <param name="Text">One sentence for a person.</param>
/// <param name="Limit">The limit, in words and the job's unit; empty where there is none.</param>
/// <param name="Value">What the job has, in the job's unit; empty where there is none.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record Finding(FindingLevel Level, string Rule, string Where, string Text, string Limit, string Value, string Source);
