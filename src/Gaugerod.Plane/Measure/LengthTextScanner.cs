using Kind = Gaugerod.Plane.Measure.LengthTextTokenKind;

namespace Gaugerod.Plane.Measure;

/// <summary>Splits a typed length into words and signs. Looks at each character at most twice.</summary>
internal sealed class LengthTextScanner(string text)
{
    private const string FeetMarks = "'′’‘ʼʹ`´＇";
    private const string InchMarks = "\"″”“„＂";
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";
    private const char OneOver = '⅟';

    // Past this many figures nothing a tape can show is left, and the reckoning would run out of room.
    private const int MostFigures = 12;

    private readonly List<LengthTextToken> _tokens = [];
    private int _at;
    private bool _spaced;

    /// <summary>The words and signs, closed by an end; null with a refusal when there is one that is unknown.</summary>
    internal List<LengthTextToken>? Scan(out LengthReading.Refused? refused)
    {
        refused = null;
        while (_at < text.Length && refused is null)
        {
            if (char.IsWhiteSpace(text[_at]))
            {
                (_spaced, _at) = (true, _at + 1);
                continue;
            }

            refused = Next(text[_at]);
            _spaced = false;
        }

        _tokens.Add(new(Kind.End, text.Length, text.Length, _spaced));
        return refused is null ? _tokens : null;
    }

    private LengthReading.Refused? Next(char c)
    {
        if (IsFigure(c) || (c is '.' or ',' && _at + 1 < text.Length && IsFigure(text[_at + 1]))) return Number();
        if (Vulgar(c) is { } fraction) return Add(Kind.Fraction, 1, value: new(fraction.Numerator, fraction.Denominator));
        if (c == OneOver || Raised.Contains(c)) return SmallFraction();
        if (char.IsLetter(c) && !FeetMarks.Contains(c)) return Word();
        if (FeetMarks.Contains(c))
        {
            var twice = _at + 1 < text.Length && FeetMarks.Contains(text[_at + 1]);
            return Add(Kind.Unit, twice ? 2 : 1, twice ? LengthTextUnit.Inch : LengthTextUnit.Foot);
        }

        if (InchMarks.Contains(c)) return Add(Kind.Unit, 1, LengthTextUnit.Inch);
        return c switch
        {
            '+' => Add(Kind.Plus, 1),
            '-' or '\u2010' or '\u2011' or '\u2013' => Add(Kind.Hyphen, 1),
            '\u2212' => Add(Kind.Minus, 1),
            '*' or '×' => Add(Kind.Times, 1),
            '÷' => Add(Kind.Divide, 1),
            '/' or '\u2044' or '\u2215' => Add(Kind.Slash, 1),
            _ => LengthMessages.UnknownSign(text, c),
        };
    }

    private LengthReading.Refused? Add(Kind kind, int length, LengthTextUnit unit = LengthTextUnit.None, LengthTextRatio value = default)
    {
        _tokens.Add(new(kind, _at, _at + length, _spaced) { Unit = unit, Value = value });
        _at += length;
        return null;
    }

    private LengthReading.Refused? Word()
    {
        var end = _at;
        while (end < text.Length && char.IsLetter(text[end]) && !FeetMarks.Contains(text[end])) end++;
        var word = text.AsSpan(_at, end - _at);
        if (word is "x" or "X") return Add(Kind.Times, 1);
        var unit = LengthTextUnits.Named(word);
        if (unit == LengthTextUnit.None) return LengthMessages.UnknownWord(text, _at, end);
        // "40 in." with its full stop, but not "3ft.5" where the point begins a number
        var stop = end < text.Length && text[end] == '.' && !(end + 1 < text.Length && IsFigure(text[end + 1]));
        return Add(Kind.Unit, end - _at + (stop ? 1 : 0), unit);
    }

    private LengthReading.Refused? Number()
    {
        var end = _at;
        while (end < text.Length && (IsFigure(text[end]) || text[end] is '.' or ',')) end++;
        var written = text[_at..end];
        var mark = written.IndexOfAny(['.', ',']);
        if (mark >= 0 && written.AsSpan(mark + 1).ContainsAny('.', ',')) return LengthMessages.ManyMarks(text, written);
        if (mark >= 0 && mark == written.Length - 1 && written[mark] == ',') return LengthMessages.NotANumber(text, written);
        var whole = (mark < 0 ? written : written[..mark]).TrimStart('0');
        var decimals = mark < 0 ? "" : written[(mark + 1)..].TrimEnd('0');
        if (whole.Length > MostFigures) return LengthMessages.TooLarge(text);
        if (decimals.Length > MostFigures) return LengthMessages.TooManyDecimals(text, written);

        Int128 numerator = 0, denominator = 1;
        foreach (var figure in whole) numerator = (numerator * 10) + (figure - '0');
        foreach (var figure in decimals) (numerator, denominator) = ((numerator * 10) + (figure - '0'), denominator * 10);
        var thousands = mark is >= 1 and <= 3 && written[mark] == ',' && written[0] != '0' && written.Length - mark - 1 == 3;
        _tokens.Add(new(Kind.Number, _at, end, _spaced) { Value = new(numerator, denominator), Whole = mark < 0, TwoWays = thousands });
        _at = end;
        return null;
    }

    private LengthReading.Refused? SmallFraction()
    {
        var end = _at;
        Int128 above = 1;
        if (text[_at] == OneOver) end++;
        else above = Figures(Raised, ref end);
        if (text[_at] != OneOver)
        {
            if (end >= text.Length || text[end] is not ('/' or '\u2044' or '\u2215')) return LengthMessages.NotANumber(text, text[_at..end]);
            end++;
        }

        var begin = end;
        var below = Figures(end < text.Length && Lowered.Contains(text[end]) ? Lowered : "0123456789", ref end);
        if (end == begin) return LengthMessages.NotANumber(text, text[_at..end]);
        if (below == 0) return LengthMessages.NothingBelow(text);
        if (end - _at > MostFigures) return LengthMessages.TooFine(text);
        return Add(Kind.Fraction, end - _at, value: new(above, below));
    }

    // At most LongestText figures of a text, so at most 10^64: stop reckoning where the caller refuses anyway.
    private Int128 Figures(string set, ref int end)
    {
        Int128 number = 0;
        var first = end;
        for (; end < text.Length && set.IndexOf(text[end], StringComparison.Ordinal) is >= 0 and var figure; end++)
        {
            if (end - first <= MostFigures) number = (number * 10) + figure;
        }

        return number;
    }

    private static bool IsFigure(char c) => char.IsAsciiDigit(c);

    private static (int Numerator, int Denominator)? Vulgar(char c) => c switch
    {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        _ => null,
    };
}
