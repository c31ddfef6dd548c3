namespace Gaugerod.Engine.Surveys;

/// <summary>A place that a tape is held to: a corner, or a mark on the straight line from one corner to another.</summary>
/// <param name="From">The corner, or the one the mark is measured from.</param>
/// <param name="Towards">The corner it is measured towards; the same for a corner itself.</param>
/// <param name="Along">How far from the first, in mm.</param>
internal readonly record struct Spot(int From, int Towards, double Along)
{
    public bool IsCorner => From == Towards;

    /// <summary>The same with so many corners of other faces before its own.</summary>
    public Spot Past(int corners) => new(From + corners, Towards + corners, Along);

    public static Spot At(int corner) => new(corner, corner, 0);
}

/// <summary>What a reading says.</summary>
internal enum ReadingOf
{
    /// <summary>How far two spots are apart.</summary>
    Length,

    /// <summary>How far the second stands right of the first, held level.</summary>
    Across,

    /// <summary>How far the second stands above the first, held plumb.</summary>
    Up,

    /// <summary>How far the second stands off the line through the first and its mark's corner, to its left.</summary>
    Off,

    /// <summary>How far along a string, from the first corner to the one its mark is measured towards, another from the second to the third spot crosses.</summary>
    Crossing,

    /// <summary>How far a corner is from square: the cosine between the lines from the first spot to its corner and to the second, a metre long.</summary>
    Square,

    /// <summary>How much longer the line from the second spot to its mark's corner is than the first's.</summary>
    Alike,
}

/// <summary>One reading, in mm.</summary>
/// <param name="Of">What it says.</param>
/// <param name="First">Where it is taken from.</param>
/// <param name="Second">Where it goes to.</param>
/// <param name="Value">What was read.</param>
/// <param name="Accuracy">Its standard deviation, more than zero: two readings of three are no further off.</param>
internal readonly record struct Reading(ReadingOf Of, Spot First, Spot Second, double Value, double Accuracy)
{
    /// <summary>Where the other string ends, of two that cross.</summary>
    public Spot Third { get; init; }

    /// <summary>The same with so many corners of other faces before its own.</summary>
    public Reading Past(int corners) => this with { First = First.Past(corners), Second = Second.Past(corners), Third = Third.Past(corners) };

    public static Reading Length(int from, int to, double value, double accuracy) => new(ReadingOf.Length, Spot.At(from), Spot.At(to), value, accuracy);

    public static Reading Across(int from, int to, double value, double accuracy) => new(ReadingOf.Across, Spot.At(from), Spot.At(to), value, accuracy);

    public static Reading Up(int from, int to, double value, double accuracy) => new(ReadingOf.Up, Spot.At(from), Spot.At(to), value, accuracy);

    public static Reading Square(int before, int corner, int after, double accuracy) => new(ReadingOf.Square, new(corner, before, 0), Spot.At(after), 0, accuracy);
}
