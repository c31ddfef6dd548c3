using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;

namespace Gaugerod.App.Desk;

/// <summary>A survey while it is being taken, weighed: by itself, or with those of other faces that share sides with it.</summary>
/// <param name="written">What can be read of it.</param>
/// <param name="shape">What that comes to.</param>
/// <param name="room">The surveys it is weighed with; null for none.</param>
internal sealed class SurveyLook(WrittenSurvey written, SurveyedOutline shape, SurveyRoom? room = null)
{
    private IReadOnlyList<string>? _inDoubt;

    /// <summary>Its corners, its spots and what was read.</summary>
    public FaceSurvey Survey => written.Survey;

    /// <summary>What that comes to.</summary>
    public SurveyedOutline Shape => shape;

    /// <summary>For each reading its place in the job's list.</summary>
    public IReadOnlyList<int> Rows => written.Rows;

    /// <summary>Readings that wait for their figure, by their place in the job's list.</summary>
    public IReadOnlyList<(int Row, SurveyReading Reading)> Open => written.Open;

    /// <summary>Where corners and spots stand, weighed or roughly.</summary>
    public Sequence<PlacedSpot> Places => Shape.Weighed?.Corners ?? Shape.Rough;

    /// <summary>Whether something that was said of this face may be in error: a reading, or a side taken for another.</summary>
    public bool IsInDoubt => Shape.Weighed is { } weighed && (weighed.Suspects.Count > 0 || weighed.Elsewhere.Count > 0);

    /// <summary>The other faces weighed with it of which something may be in error.</summary>
    public IReadOnlyList<string> OthersInDoubt => _inDoubt ??= Shape.Weighed is { With.Count: > 0 } weighed && room is not null ? [.. weighed.With.Where(room.IsInDoubt)] : [];

    /// <summary>What became of a reading, by its place in the job's list; null where it was not weighed.</summary>
    public WeighedReading? Weighed(int row) => Shape.Weighed is { } weighed && At(row) is >= 0 and var at ? weighed.Readings[at] : null;

    /// <summary>Whether a reading is one of those of which one must be in error.</summary>
    public bool IsDoubted(int row) => Shape.Weighed is { } weighed && At(row) is >= 0 and var at && weighed.Suspects.Contains(at);

    private int At(int row)
    {
        for (var i = 0; i < Rows.Count; i++)
        {
            if (Rows[i] == row) return i;
        }

        return -1;
    }
}
