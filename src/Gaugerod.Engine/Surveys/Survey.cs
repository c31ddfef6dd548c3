using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>A box that keeps the tile off a wall's foot or head.</summary>
/// <param name="Name">What it is called, for messages.</param>
/// <param name="AtHead">Whether it hangs from the head.</param>
/// <param name="From">Where it begins, from the left corner at the foot.</param>
/// <param name="To">Where it ends; null when it reaches the right corner.</param>
/// <param name="HeightLeft">How high above y = 0 its tiled edge runs at its left end.</param>
/// <param name="HeightRight">The same at its right end.</param>
internal sealed record SurveyBox(string Name, bool AtHead, Length From, Length? To, Length HeightLeft, Length HeightRight);

/// <summary>What one side of a surveyed outline is.</summary>
internal enum SideOf
{
    Foot,
    Right,
    Head,
    Left,
    BoxEdge,
    BoxLeft,
    BoxRight,
}

/// <summary>The tag of one side of a surveyed outline.</summary>
/// <param name="Of">What it is.</param>
/// <param name="Box">Which of the boxes it belongs to; -1 for none.</param>
internal readonly record struct SideTag(SideOf Of, int Box = -1);

/// <summary>What came of a wall's readings.</summary>
/// <param name="Outline">The wall, counter-clockwise, true to level and plumb, its left corner at the foot at the origin; null when there are faults.</param>
/// <param name="Sides">What each side of the outline is.</param>
/// <param name="LevelLine">How high above y = 0 the level line crosses the wall; null when none was struck.</param>
/// <param name="Findings">What was assumed, and where readings disagree.</param>
/// <param name="Faults">What cannot be used.</param>
internal sealed record Survey(
    Ring? Outline, Sequence<SideTag> Sides, Length? LevelLine, Sequence<Finding> Findings, Sequence<Fault> Faults);

/// <summary>What is being read, and how its lengths are said.</summary>
/// <param name="Face">The face's name.</param>
/// <param name="Path">Where it stands in the job, such as <c>faces[2]</c>.</param>
/// <param name="Tape">The tape it was read with.</param>
internal sealed record ReadingPlace(string Face, string Path, Tape Tape)
{
    public const string NoSource = "common practice, no source";

    public string Fixture(int index) => string.Create(CultureInfo.InvariantCulture, $"{Path}.fixtures[{index}]");

    public string Say(Length length) => LengthText.Nearest(length, Tape);

    public Finding Note(string rule, string text) => new(FindingLevel.Note, rule, Face, text, "", "", NoSource);
}
