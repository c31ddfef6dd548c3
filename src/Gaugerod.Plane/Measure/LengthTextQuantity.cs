namespace Gaugerod.Plane.Measure;

/// <summary>A length in a sum, or a number that becomes one or counts another.</summary>
/// <param name="Value">In steps when <paramref name="Unit"/> is stated, else the number as typed.</param>
/// <param name="Spelling">How it is spelled, where no unit is stated.</param>
/// <param name="Unit">The smallest unit stated; none for a number alone.</param>
/// <param name="End">Where it ends in the text.</param>
internal readonly record struct LengthTextQuantity(LengthTextRatio Value, LengthTextSpelling Spelling, LengthTextUnit Unit, int End)
{
    internal bool IsLength => Unit != LengthTextUnit.None;

    internal bool IsPlain => !IsLength && Spelling == LengthTextSpelling.Plain;

    /// <summary>The unit it has, or takes: a fraction is inches.</summary>
    internal LengthTextUnit UnitOr(LengthUnit job) =>
        IsLength ? Unit : IsPlain ? LengthTextUnits.Of(job) : LengthTextUnit.Inch;

    internal LengthTextRatio Steps(LengthUnit job) =>
        IsLength ? Value : Value * new LengthTextRatio(LengthTextUnits.Steps(UnitOr(job)), 1);
}

/// <summary>Joins parts to quantities, such as feet with inches, and multiplies and divides them.</summary>
internal sealed class LengthTextQuantities(string text, LengthTextNumbers numbers, LengthUnit job)
{
    internal LengthTextQuantity? Read()
    {
        if (numbers.Part() is not { } part) return null;
        if (part.Unit == LengthTextUnit.None)
        {
            return numbers.AtNumber
                ? Refuse(LengthMessages.TwoNumbers(text, part.Start, part.End, numbers.Current, job))
                : new(part.Number, part.Spelling, part.Unit, part.End);
        }

        var (start, sum) = (part.Start, Steps(part));
        while (Next(part) is { } next)
        {
            if (Fault(part, next) is { } fault) return Refuse(fault);
            sum += Steps(next);
            if (!(Steps(next) / Steps(part with { Number = new(1, 1) })).IsUnderOne) return Refuse(LengthMessages.Carries(text, start, part, next, sum));
            part = next;
        }

        return numbers.Refused is null ? new(sum, part.Spelling, part.Unit, part.End) : null;
    }

    internal LengthTextQuantity? Times(LengthTextQuantity a, LengthTextQuantity b)
    {
        if (a.IsLength && b.IsLength) return Refuse(LengthMessages.Area(text));
        var (unit, spelling) = (a.IsLength ? a.Unit : b.Unit, a.IsPlain ? b.Spelling : a.Spelling);
        if (unit == LengthTextUnit.None && a.IsPlain != b.IsPlain && spelling != LengthTextSpelling.Mixed && job != LengthUnit.Inch)
        {
            return Refuse(LengthMessages.CountTwoWays(text, a.End, b.End, a.IsPlain));
        }

        return new(a.Value * b.Value, spelling, unit, b.End);
    }

    internal LengthTextQuantity? Divided(LengthTextQuantity a, LengthTextQuantity b) =>
        b.IsLength ? Refuse(LengthMessages.DividedByLength(text))
        : b.Value.IsZero ? Refuse(LengthMessages.NothingBelow(text))
        : a with { Value = a.Value / b.Value, End = b.End };

    // The part that goes on from one with a unit: the inches after the feet, with a space, a hyphen or nothing between.
    private LengthTextPart? Next(LengthTextPart part)
    {
        if (numbers.AtNumber) return WithUnit(part, numbers.Part());
        if (part is not { Unit: LengthTextUnit.Foot, Whole: true } || !numbers.DashAndNumber) return null;

        var (before, tight) = (numbers.At, numbers.TightHyphen);
        var hyphen = numbers.Current;
        numbers.At++;
        if (numbers.Part() is not { } next) return null;
        var joins = next.Unit is LengthTextUnit.None or LengthTextUnit.Inch;
        if (joins && tight) return WithUnit(part, next);
        if (joins) numbers.Refused = LengthMessages.HyphenTwoWays(text, hyphen.Start, hyphen.End, next);
        numbers.At = before;
        return null;
    }

    private static LengthTextPart? WithUnit(LengthTextPart before, LengthTextPart? next) =>
        next is { Unit: LengthTextUnit.None } bare && before.Unit == LengthTextUnit.Foot ? bare with { Unit = LengthTextUnit.Inch } : next;

    private LengthReading.Refused? Fault(LengthTextPart part, LengthTextPart next)
    {
        if (next.Unit == LengthTextUnit.None) return LengthMessages.UnitMissing(text, part, next);
        if (LengthTextUnits.IsImperial(part.Unit) != LengthTextUnits.IsImperial(next.Unit)) return LengthMessages.TwoTapes(text, next.Start);
        if (LengthTextUnits.Steps(next.Unit) >= LengthTextUnits.Steps(part.Unit)) return LengthMessages.LargerFirst(text);
        return part.Whole ? null : LengthMessages.WholeFirst(text, next.Start, part.Unit);
    }

    private static LengthTextRatio Steps(LengthTextPart part) => part.Number * new LengthTextRatio(LengthTextUnits.Steps(part.Unit), 1);

    private LengthTextQuantity? Refuse(LengthReading.Refused refused)
    {
        numbers.Refused = refused;
        return null;
    }
}
