using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>What a measure may be where it is not settled yet.</summary>
/// <param name="Least">No less than this.</param>
/// <param name="Most">No more than this; no less than the least.</param>
public sealed record Span(Length Least, Length Most)
{
    /// <summary>Whether a measure is allowed.</summary>
    public bool Holds(Length length) => length >= Least && length <= Most;
}

/// <summary>How an opening may be moved and resized so that its edges meet joints; null for what is settled.</summary>
/// <param name="Left">Where its left edge may stand.</param>
/// <param name="Bottom">How high its foot may be.</param>
/// <param name="Width">How wide it may be.</param>
/// <param name="Height">How high it may be.</param>
public sealed record OpeningRange(Span? Left, Span? Bottom, Span? Width, Span? Height)
{
    /// <summary>The clear space between the studs it stands between, which both its sides keep within; null where nothing is said of studs.</summary>
    public Span? Studs { get; init; }

    /// <summary>What the job counts heights from, above y = 0.</summary>
    public Length Under { get; init; }

    /// <summary>Where its left edge may stand: as is said, else anywhere between the studs.</summary>
    public Span? Sideways => Left ?? Studs;

    /// <summary>Whether a place and size are allowed to an opening that was asked for at another.</summary>
    public bool Holds(Box box, Box asked) =>
        May(Sideways, box.Left, asked.Left) && May(Bottom, box.Bottom, asked.Bottom) && May(Width, box.Width, asked.Width) && May(Height, box.Height, asked.Height)
        && (Studs is not { } studs || (box.Left >= studs.Least && box.Right <= studs.Most));

    private static bool May(Span? span, Length measure, Length asked) => span?.Holds(measure) ?? measure == asked;
}

/// <summary>How a fixture may be moved and resized so that its edges meet joints; null for what is settled.</summary>
/// <param name="Height">How high its edge may run at its left end; the right end goes with it.</param>
/// <param name="From">Where it may begin.</param>
/// <param name="To">Where it may end: of a bench along the next wall, its front.</param>
public sealed record FixtureRange(Span? Height, Span? From, Span? To)
{
    /// <summary>What the job counts heights from, above y = 0.</summary>
    public Length Under { get; init; }
}
