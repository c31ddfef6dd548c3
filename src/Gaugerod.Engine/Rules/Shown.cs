using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Lengths in findings.</summary>
internal static class Shown
{
    private static readonly Tape SixtyFourths = new(LengthUnit.Inch, Length.FromInches(0, 1, 64));
    private static readonly Tape TenthsOfMillimetre = new(LengthUnit.Millimetre, Length.FromSteps(Length.StepsPerMillimetre / 10));

    /// <summary>A joint, a warp or a tolerance: finer than the tape where the tape would hide it (1/64 in, 0.1 mm).</summary>
    internal static string Fine(Length length, Tape tape)
    {
        if (tape.Nearest(length) == length) return LengthText.Nearest(length, tape);
        return LengthText.Nearest(length, tape.Unit == LengthUnit.Inch ? SixtyFourths : TenthsOfMillimetre);
    }
}
