namespace Gaugerod.Plane.Measure;

/// <summary>
/// The tape a person reads: its unit and the distance between its finest marks. Numbers are shown to the mark;
/// they are never kept to it.
/// </summary>
/// <param name="Unit">What the tape counts.</param>
/// <param name="Mark">The distance between two marks; more than zero. Usual: 1/16 in, or 1 mm.</param>
public sealed record Tape(LengthUnit Unit, Length Mark)
{
    /// <summary>A tape in inches with marks at every 1/16 in.</summary>
    public static Tape Sixteenths { get; } = new(LengthUnit.Inch, Length.FromInches(0, 1, 16));

    /// <summary>A tape in millimetres with a mark at every one.</summary>
    public static Tape Millimetres { get; } = new(LengthUnit.Millimetre, Length.FromMillimetres(1));

    /// <summary>The last mark at or below a length: what a cut that must fit a gap is rounded to.</summary>
    public Length Down(Length length) => Length.FromSteps(FloorDiv(length.Steps, Mark.Steps) * Mark.Steps);

    /// <summary>The mark nearest to a length; from the middle of two, the one further from zero.</summary>
    public Length Nearest(Length length)
    {
        var magnitude = FloorDiv((Math.Abs(length.Steps) * 2) + Mark.Steps, Mark.Steps * 2) * Mark.Steps;
        return Length.FromSteps(length.IsNegative ? -magnitude : magnitude);
    }

    private static long FloorDiv(long value, long by) => (value / by) - (value % by < 0 ? 1 : 0);
}
