using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>A face and its place in the job, counted from zero.</summary>
/// <param name="Index">Its place.</param>
/// <param name="Face">The face.</param>
internal readonly record struct NumberedFace(int Index, Face Face);

/// <summary>The faces of one run, and what decides how they meet.</summary>
/// <param name="Path">Where the run stands in the job, such as <c>runs[0]</c>.</param>
/// <param name="Faces">The faces, left to right as seen from inside the room.</param>
/// <param name="BuildUp">Bond coat and tile of the run's product.</param>
/// <param name="Through">The face whose tile runs into its inside corners; null for the middle one.</param>
/// <param name="EdgeJoint">The soft joint at edges that state none.</param>
/// <param name="Tape">How lengths are said.</param>
internal sealed record RunOfFaces(
    string Path, Sequence<NumberedFace> Faces, Length BuildUp, string? Through, Length EdgeJoint, Tape Tape);

/// <summary>What came of a run's faces.</summary>
/// <param name="Faces">The faces with their fields, in the run's order; none when there are faults.</param>
/// <param name="Findings">What was assumed, and where readings disagree.</param>
/// <param name="Faults">What cannot be used.</param>
internal sealed record FinishedRun(Sequence<FinishedFace> Faces, Sequence<Finding> Findings, Sequence<Fault> Faults)
{
    /// <summary>How far each face is turned from level, where they are the strips of a border and each is laid by itself; else none.</summary>
    public Sequence<Angle> Strips { get; init; } = [];

    /// <summary>What became of the readings of those faces that were surveyed.</summary>
    public Sequence<WeighedSurvey> Surveys { get; init; } = [];
}

/// <summary>Gathers what is to be said about a run.</summary>
internal sealed class Remarks(Tape tape)
{
    public const string NoSource = "common practice, no source";

    public Tape Tape { get; } = tape;

    public List<Fault> Faults { get; } = [];

    public List<Finding> Findings { get; } = [];

    /// <summary>What became of the readings of surveyed faces.</summary>
    public List<WeighedSurvey> Surveys { get; } = [];

    public string Say(Length length) => LengthText.Nearest(length, Tape);

    public void Refuse(string path, string found, string expected, string? nearest = null) =>
        Faults.Add(new(path, found, expected, nearest));

    /// <summary>Says it once: every chord of an arc would say the same.</summary>
    public void Find(FindingLevel level, string rule, string where, string text)
    {
        var finding = new Finding(level, rule, where, text, "", "", NoSource);
        if (!Findings.Contains(finding)) Findings.Add(finding);
    }
}
