using Kind = Gaugerod.Plane.Measure.LengthTextTokenKind;

namespace Gaugerod.Plane.Measure;

/// <summary>How a number is spelled, which decides what it means without a unit.</summary>
internal enum LengthTextSpelling
{
    /// <summary>Whole or decimal: in the job's unit.</summary>
    Plain,

    /// <summary>A fraction under one: inches.</summary>
    Fraction,

    /// <summary>A fraction of one or more, such as <c>96/2</c>: inches, or a division.</summary>
    Improper,

    /// <summary>A whole number and a fraction: inches.</summary>
    Mixed,
}

/// <summary>A number and the unit behind it, if any.</summary>
internal readonly record struct LengthTextPart(
    LengthTextRatio Number, LengthTextSpelling Spelling, bool Whole, LengthTextUnit Unit, int Start, int End);

/// <summary>Reads numbers with their fractions and units off the words of a text.</summary>
internal sealed class LengthTextNumbers(string text, List<LengthTextToken> tokens, LengthUnit job)
{
    /// <summary>Which word comes next.</summary>
    internal int At { get; set; }

    /// <summary>Why nothing was read.</summary>
    internal LengthReading.Refused? Refused { get; set; }

    internal LengthTextToken Current => tokens[At];

    internal bool AtNumber => Current.Kind is Kind.Number or Kind.Fraction;

    /// <summary>Whether a hyphen stands here with no space before or after it.</summary>
    internal bool TightHyphen => Current is { Kind: Kind.Hyphen, Spaced: false } && !tokens[At + 1].Spaced;

    /// <summary>Whether a hyphen or minus stands here and a number follows.</summary>
    internal bool DashAndNumber => Current.Kind is Kind.Hyphen && tokens[At + 1].Kind is Kind.Number or Kind.Fraction;

    internal LengthTextPart? Part()
    {
        if (!AtNumber)
        {
            Refused = LengthMessages.NumberMissing(text, Current.Start, job);
            return null;
        }

        var first = Current;
        if (Number() is not { } number) return null;
        var (unit, end) = (LengthTextUnit.None, tokens[At - 1].End);
        if (Current.Kind == Kind.Unit) (unit, end) = (Current.Unit, tokens[At++].End);
        if (first.TwoWays && unit != LengthTextUnit.Metre)
        {
            Refused = LengthMessages.CommaTwoWays(text, first.Start, first.End, unit == LengthTextUnit.None ? LengthTextUnits.Of(job) : unit);
            return null;
        }

        return new(number.Value, number.Spelling, number.Spelling == LengthTextSpelling.Plain && first.Whole, unit, first.Start, end);
    }

    private (LengthTextRatio Value, LengthTextSpelling Spelling)? Number()
    {
        var first = tokens[At];
        if (StandsFraction(At)) return Fraction() is { } alone ? (alone, alone.IsUnderOne ? LengthTextSpelling.Fraction : LengthTextSpelling.Improper) : null;
        At++;
        if (!first.Whole) return (first.Value, LengthTextSpelling.Plain);

        var hyphen = Current.Kind == Kind.Hyphen && StandsFraction(At + 1);
        var follows = hyphen || (StandsFraction(At) && (Current.Spaced || Current.Kind == Kind.Fraction));
        if (!follows) return (first.Value, LengthTextSpelling.Plain);
        if (hyphen && !TightHyphen)
        {
            // "40 - 1/2" takes away; "40 -1/2" may be a slip for either
            if (Current.Spaced && tokens[At + 1].Spaced) return (first.Value, LengthTextSpelling.Plain);
            Refused = LengthMessages.HyphenTwoWays(text, Current.Start, Current.End);
            return null;
        }

        var before = At;
        if (hyphen) At++;
        var begin = Current.Start;
        if (Fraction() is not { } fraction) return null;
        if (fraction.IsUnderOne) return (first.Value + fraction, LengthTextSpelling.Mixed);
        if (hyphen)
        {
            At = before;
            return (first.Value, LengthTextSpelling.Plain);
        }

        Refused = LengthMessages.FractionOverOne(text, first.Start, begin, tokens[At - 1].End, first.Value, fraction);
        return null;
    }

    // ½, or two whole numbers with a line and no space between.
    private bool StandsFraction(int at) => tokens[at].Kind == Kind.Fraction
        || (tokens[at] is { Kind: Kind.Number, Whole: true }
            && tokens[at + 1] is { Kind: Kind.Slash, Spaced: false }
            && tokens[at + 2] is { Kind: Kind.Number, Whole: true, Spaced: false });

    private LengthTextRatio? Fraction()
    {
        if (Current.Kind == Kind.Fraction) return tokens[At++].Value;
        var (above, below) = (tokens[At].Value, tokens[At + 2].Value);
        At += 3;
        if (below.IsZero) Refused = LengthMessages.NothingBelow(text);
        else if (Current is { Kind: Kind.Slash, Spaced: false }) Refused = LengthMessages.TwoLines(text);
        return Refused is null ? above / below : null;
    }
}
