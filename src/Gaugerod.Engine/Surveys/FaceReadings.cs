using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>What a person really reads on a wall with a tape, a level and a plumb line.</summary>
/// <param name="Width">Widths between the corners, as seen from inside the room.</param>
/// <param name="Height">Heights along the two corners, floor to ceiling.</param>
/// <param name="LevelLine">The level line's height above the floor at both ends; null when none was struck, and the floor is taken as level.</param>
/// <param name="Lean">How far each corner leans between its foot and its top.</param>
public sealed record FaceReadings(WidthReadings Width, HeightReadings Height, LevelLineReadings? LevelLine, LeanReadings Lean);

/// <summary>Widths of a wall. Only the foot must be read.</summary>
/// <param name="Foot">At the floor; more than zero.</param>
/// <param name="Middle">Half-way up; null when not read.</param>
/// <param name="Top">At the ceiling; null when not read.</param>
public sealed record WidthReadings(Length Foot, Length? Middle, Length? Top);

/// <summary>Heights of a wall along its corners.</summary>
/// <param name="Left">At the left corner; more than zero.</param>
/// <param name="Right">At the right corner; null when not read, and then taken so that the ceiling is level.</param>
public sealed record HeightReadings(Length Left, Length? Right);

/// <summary>How far the struck level line stands above the floor.</summary>
/// <param name="Left">At the left corner.</param>
/// <param name="Right">At the right corner.</param>
public sealed record LevelLineReadings(Length Left, Length Right)
{
    /// <summary>The same between the corners, left to right; the floor is straight from one reading to the next. Default none.</summary>
    public Sequence<LineStation> Between { get; init; } = [];
}

/// <summary>The level line's height above the floor at one place along a wall.</summary>
/// <param name="At">How far from the left corner, at the foot; more than zero and less than the wall's width there.</param>
/// <param name="Height">How high the line stands above the floor there.</param>
public sealed record LineStation(Length At, Length Height);

/// <summary>How far the top of each corner stands in from its foot: more than zero leans in, and the wall is narrower at the top.</summary>
/// <param name="Left">At the left corner; null when not read.</param>
/// <param name="Right">At the right corner; null when not read.</param>
public sealed record LeanReadings(Length? Left, Length? Right);
