using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>A shape as it was taken with a tape, a level and a plumb line: its corners and what was read between them, more than is needed or less.</summary>
/// <param name="Corners">Its corners, counter-clockwise as seen from the room; three or more.</param>
/// <param name="Spots">Other spots that were measured to, by name: a drain, the middle of a valve.</param>
/// <param name="Readings">What was read.</param>
public sealed record FaceSurvey(Sequence<SurveyCorner> Corners, Sequence<string> Spots, Sequence<SurveyReading> Readings)
{
    /// <summary>What still comes off its sides, old tile or plaster, so that they will stand further out. Default none.</summary>
    public Sequence<ComesOff> ComesOff { get; init; } = [];

    /// <summary>Sides that are also those of other surveyed faces, as they were read, before anything comes off. Default none.</summary>
    public Sequence<SharedSide> Same { get; init; } = [];

    /// <summary>The level line's place among corners and spots: after them all.</summary>
    public int LevelLine => Corners.Count + Spots.Count;

    /// <summary>Whether anything ties it to level or plumb; else its first side is laid level.</summary>
    internal bool IsTied => Readings.Any(reading => reading.As is ReadAs.Level or ReadAs.Plumb);

    /// <summary>What a corner, a spot or the level line is called.</summary>
    internal string NameOf(int at) => at < Corners.Count ? Corners[at].Name : at < LevelLine ? Spots[at - Corners.Count] : "the level line";
}

/// <summary>A corner of a surveyed shape.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="IsOutside">Whether it points into the room.</param>
/// <param name="Near">Where it stands roughly; needed of every corner where corners are far from square, else null.</param>
public sealed record SurveyCorner(string Name, bool IsOutside, Point? Near);

/// <summary>A place that a tape is held to.</summary>
/// <param name="At">The corner or spot, or the one a mark is measured from.</param>
/// <param name="Towards">The corner a mark is measured towards; the same for a corner or a spot itself.</param>
/// <param name="Along">How far.</param>
public readonly record struct SurveySpot(int At, int Towards, Length Along)
{
    /// <summary>A corner or a spot itself.</summary>
    public static SurveySpot Of(int at) => new(at, at, Length.Zero);

    internal Spot Spot => new(At, Towards, SurveyNetwork.Millimetres(Along));
}

/// <summary>How a reading was taken.</summary>
public enum ReadAs
{
    /// <summary>Straight from one to the other.</summary>
    Straight,

    /// <summary>With the tape held level, to the right.</summary>
    Level,

    /// <summary>With the tape held plumb, upwards.</summary>
    Plumb,

    /// <summary>Square off the line from the first spot to its mark's corner.</summary>
    Off,

    /// <summary>Along a string from the first spot to its mark's corner, to where another from the second to the third crosses.</summary>
    Strings,
}

/// <summary>One reading.</summary>
/// <param name="As">How it was taken.</param>
/// <param name="First">From where.</param>
/// <param name="Second">To where.</param>
/// <param name="Value">What was read.</param>
/// <param name="Accuracy">How far it may be off, one standard deviation: two readings of three are no further off. More than zero.</param>
public sealed record SurveyReading(ReadAs As, SurveySpot First, SurveySpot Second, Length Value, Length Accuracy)
{
    /// <summary>Where the other string ends, of two that cross.</summary>
    public SurveySpot Third { get; init; }
}

/// <summary>What still comes off one side.</summary>
/// <param name="Side">The corner that the side begins at.</param>
/// <param name="Thickness">How thick it is.</param>
/// <param name="Accuracy">How far that may be off, one standard deviation.</param>
public sealed record ComesOff(int Side, Length Thickness, Length Accuracy);
