using System.Globalization;

namespace Gaugerod.Plane.Measure;

/// <summary>Writes lengths that already lie on a mark of the tape.</summary>
internal static class LengthTextWriter
{
    private const long StepsPer128th = Length.StepsPerInch / 128;

    // A decimal's error must stay under half a step, so that reading it back gives the same length.
    private const int MostDecimalsOfMillimetre = 4;
    private const int MostDecimalsOfInch = 5;

    internal static string WithUnit(Length onMark, Tape tape) =>
        Bare(onMark, tape) + (tape.Unit == LengthUnit.Inch ? " in" : " mm");

    internal static string Bare(Length onMark, Tape tape) =>
        Sign(onMark) + (tape.Unit == LengthUnit.Inch
            ? Inches(onMark.Abs().Steps, tape, keepZero: false)
            : Decimal(onMark.Abs().Steps, Length.StepsPerMillimetre, tape.Mark.Steps, MostDecimalsOfMillimetre));

    internal static string Feet(Length onMark, Tape tape)
    {
        var (feet, rest) = Math.DivRem(onMark.Abs().Steps, Length.StepsPerInch * 12);
        var inches = Inches(rest, tape, keepZero: feet > 0) + "\"";
        return Sign(onMark) + (feet > 0 ? Whole(feet) + "' " + inches : inches);
    }

    private static string Sign(Length length) => length.IsNegative ? "-" : "";

    private static string Inches(long steps, Tape tape, bool keepZero)
    {
        if (tape.Mark.Steps % StepsPer128th != 0) return Decimal(steps, Length.StepsPerInch, tape.Mark.Steps, MostDecimalsOfInch);
        var (whole, rest) = Math.DivRem(steps / StepsPer128th, 128);
        if (rest == 0) return Whole(whole);
        var denominator = 128L;
        while (rest % 2 == 0) (rest, denominator) = (rest / 2, denominator / 2);
        var fraction = Whole(rest) + "/" + Whole(denominator);
        return whole > 0 || keepZero ? Whole(whole) + " " + fraction : fraction;
    }

    private static string Decimal(long steps, long perUnit, long mark, int most)
    {
        var (decimals, scale) = (0, 1L);
        while (decimals < most && (Int128)mark * scale % perUnit != 0) (decimals, scale) = (decimals + 1, scale * 10);
        var scaled = (((Int128)steps * scale * 2) + perUnit) / (perUnit * 2);
        var whole = Whole((long)(scaled / scale));
        return decimals == 0 ? whole : whole + "." + Whole((long)(scaled % scale)).PadLeft(decimals, '0');
    }

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);
}
