using Kind = Gaugerod.Plane.Measure.LengthTextTokenKind;

namespace Gaugerod.Plane.Measure;

/// <summary>Reads a typed length: terms with plus and minus between, each of quantities with times and divide between.</summary>
internal sealed class LengthTextReader
{
    private readonly string _text;
    private readonly LengthUnit _job;
    private readonly LengthTextNumbers _numbers;
    private readonly LengthTextQuantities _quantities;

    private LengthTextReader(string text, List<LengthTextToken> tokens, LengthUnit job)
    {
        (_text, _job) = (text, job);
        _numbers = new(text, tokens, job);
        _quantities = new(text, _numbers, job);
    }

    internal static LengthReading Read(string typed, LengthUnit job)
    {
        if (typed.Length > LengthText.LongestText) return LengthMessages.TooLong(typed);
        var text = typed.Trim();
        if (text.Length == 0) return LengthMessages.Empty(job);
        if (new LengthTextScanner(text).Scan(out var refused) is not { } tokens) return refused!;
        try
        {
            return new LengthTextReader(text, tokens, job).Sum();
        }
        catch (OverflowException)
        {
            // more than the 38 figures that sums are kept to: longer or finer than anything that can be built
            return LengthMessages.TooLarge(text);
        }
    }

    private LengthReading Sum()
    {
        var terms = new List<(LengthTextQuantity Quantity, bool Taken)>();
        var taken = Sign() ?? false;
        do
        {
            if (Term() is not { } term) return _numbers.Refused!;
            terms.Add((term, taken));
            if (_numbers.Current.Kind == Kind.End) break;
            if (Sign() is not { } sign) return LengthMessages.NotUnderstood(_text, _numbers.Current.Start);
            taken = sign;
        }
        while (true);

        if (UnitsOpen(terms) is { } open) return open;
        var sum = new LengthTextRatio(0, 1);
        foreach (var (quantity, away) in terms)
        {
            var steps = quantity.Steps(_job);
            sum += away ? -steps : steps;
        }

        return Kept(sum, terms);
    }

    private bool? Sign()
    {
        if (_numbers.Current.Kind is not (Kind.Plus or Kind.Minus or Kind.Hyphen)) return null;
        var taken = _numbers.Current.Kind != Kind.Plus;
        _numbers.At++;
        return taken;
    }

    private LengthTextQuantity? Term()
    {
        var term = _quantities.Read();
        while (term is { } soFar && _numbers.Current.Kind is Kind.Times or Kind.Divide or Kind.Slash)
        {
            var times = _numbers.Current.Kind == Kind.Times;
            _numbers.At++;
            if (_quantities.Read() is not { } next) return null;
            term = times ? _quantities.Times(soFar, next) : _quantities.Divided(soFar, next);
        }

        return term;
    }

    // A fraction that may be a division in a metric job, or a number that could take either of two units.
    private LengthReading.Refused? UnitsOpen(List<(LengthTextQuantity Quantity, bool Taken)> terms)
    {
        var plain = terms.Where(t => t.Quantity.IsPlain).Select(t => t.Quantity.End).ToList();
        foreach (var (quantity, _) in terms)
        {
            if (quantity is { IsLength: false, Spelling: LengthTextSpelling.Improper } && _job != LengthUnit.Inch) return LengthMessages.DivisionOrInches(_text);
            var unit = quantity.UnitOr(_job);
            if (plain.Count > 0 && unit != LengthTextUnits.Of(_job)) return LengthMessages.UnitTwoWays(_text, plain, LengthTextUnits.Of(_job), unit);
        }

        return null;
    }

    private LengthReading Kept(LengthTextRatio sum, List<(LengthTextQuantity Quantity, bool Taken)> terms)
    {
        var steps = sum.Rounded();
        if (Int128.Abs(steps) > LengthText.Greatest.Steps) return LengthMessages.TooLarge(_text);
        if (steps == 0 && !sum.IsZero) return LengthMessages.TooSmall(_text);
        var read = new LengthReading.Understood(Length.FromSteps((long)steps));
        if (_job == LengthUnit.Inch || terms.Exists(t => LengthTextUnits.IsImperial(t.Quantity.Unit)) || terms.TrueForAll(t => t.Quantity.IsLength || t.Quantity.IsPlain)) return read;
        var bare = terms.TrueForAll(t => !t.Quantity.IsLength);
        var millimetres = (sum * new LengthTextRatio(LengthTextUnits.Steps(LengthTextUnit.Millimetre), LengthTextUnits.Steps(LengthTextUnit.Inch))).Rounded();
        return read with { FractionAsInches = true, InMillimetres = bare ? Length.FromSteps((long)millimetres) : null };
    }
}
