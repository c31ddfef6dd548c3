using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>How far the field's edge turns from one side to the next.</summary>
internal readonly struct Bend
{
    // Sides that bend less than this go straight on: there is no corner to turn.
    private const double Gentle = 0.125;

    // A corner piece is made for a right angle; so much the joints beside it take up (some 3 degrees).
    private const double OutOfSquare = 0.06;

    public Bend(FieldEdge one, FieldEdge next)
    {
        var size = Math.Sqrt((double)Segments.Dot(one.From, one.To, one.From, one.To)) * Math.Sqrt((double)Segments.Dot(next.From, next.To, next.From, next.To));
        Sine = (double)Segments.Cross(one.From, one.To, next.From, next.To) / size;
        Cosine = (double)Segments.Dot(one.From, one.To, next.From, next.To) / size;
    }

    public double Sine { get; }

    public double Cosine { get; }

    public bool IsStraight => Math.Abs(Sine) < Gentle;

    public bool IsSquare => Math.Abs(Cosine) <= OutOfSquare;

    /// <summary>Whether the corner points out of the field, so that a strip round it is longer on its far side.</summary>
    public bool IsOutside => Sine > 0;

    /// <summary>How far past the corner a line so far off one side meets a line so far off the other.</summary>
    public long Reach(long off, long other) => Grid.Nearest((other - (off * Cosine)) / Sine).Steps;
}
