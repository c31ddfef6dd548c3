using System.Globalization;

namespace Gaugerod.Plane.Measure;

/// <summary>Every sentence with which a length is refused.</summary>
internal static class LengthMessages
{
    internal static LengthReading.Refused Empty(LengthUnit job) => new("nothing", Example(job), null);

    internal static LengthReading.Refused TooLong(string text) =>
        new($"{text[..20].Trim()}…", $"a length in at most {Figures(LengthText.LongestText)} characters", null);

    internal static LengthReading.Refused UnknownSign(string text, char sign) =>
        new(text, char.IsDigit(sign) ? "a length in the figures 0 to 9" : "a length of numbers, units and the signs + - x ÷ /", null);

    internal static LengthReading.Refused UnknownWord(string text, int start, int end) =>
        new(text, "a number with a unit: mm, cm, m, in or ft",
            LengthTextUnits.NearestWord(text[start..end]) is { } word ? text[..start] + word + text[end..] : null);

    internal static LengthReading.Refused NotANumber(string text, string written) => new(text, $"a number in place of {written}", null);

    internal static LengthReading.Refused ManyMarks(string text, string written)
    {
        // the last mark is the decimal one when it differs from the others; none is when they are all alike
        var last = written.LastIndexOfAny(['.', ',']);
        var thousands = written[..last].Split(written[last] == '.' ? ',' : '.');
        if (thousands.Length == 1) thousands = written.Split(written[last]);
        var grouped = thousands.All(g => g.All(char.IsAsciiDigit)) && thousands[0].Length is >= 1 and <= 3 && thousands[1..].All(g => g.Length == 3);
        var plain = string.Concat(thousands) + (string.Concat(thousands).Length + thousands.Length - 1 == written.Length ? "" : "." + written[(last + 1)..]);
        return new(text, "a number with one decimal mark and no others", grouped ? text.Replace(written, plain, StringComparison.Ordinal) : null);
    }

    internal static LengthReading.Refused TooLarge(string text) => new(text, "at most 1000 m (39370 1/16 in)", null);

    internal static LengthReading.Refused TooSmall(string text) => new(text, "0, or a length of at least 0.0003 mm", null);

    internal static LengthReading.Refused TooFine(string text) => new(text, "a fraction of at most 12 characters", null);

    // What a spreadsheet leaves behind: 198.19799999999998.
    internal static LengthReading.Refused TooManyDecimals(string text, string written)
    {
        var point = written.Replace(',', '.');
        var nearest = decimal.TryParse(point, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? text.Replace(written, decimal.Round(number, 3, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            : null;
        return new(text, "at most 12 figures after the point", nearest);
    }

    internal static LengthReading.Refused NothingBelow(string text) => new(text, "a number other than 0 to divide by", null);

    internal static LengthReading.Refused TwoLines(string text) => new(text, "one line in a fraction; write ÷ to divide it", null);

    internal static LengthReading.Refused NumberMissing(string text, int at, LengthUnit job) =>
        new(text, at == 0 ? Example(job) : at >= text.Length ? $"a number after {text}" : $"a number before {text[at..]}", null);

    internal static LengthReading.Refused NotUnderstood(string text, int at) =>
        new(text, $"+, -, x or ÷ between {text[..at].TrimEnd()} and {text[at..]}", null);

    internal static LengthReading.Refused CommaTwoWays(string text, int start, int end, LengthTextUnit unit)
    {
        var (number, word) = (text[start..end], LengthTextUnits.Word(unit));
        return new(text, $"{number} written so that its comma can be read one way only",
            $"{number.Replace(',', '.')} {word} or {number.Replace(",", "", StringComparison.Ordinal)} {word}");
    }

    // A bare number that is joined to feet is inches; taken away from them it must say so.
    internal static LengthReading.Refused HyphenTwoWays(string text, int start, int end, LengthTextPart? bare = null)
    {
        var (before, after) = (text[..start].TrimEnd(), text[end..].TrimStart());
        var away = bare is { Unit: LengthTextUnit.None } part ? text.Insert(part.End, " in")[end..].TrimStart() : after;
        return new(text, "a hyphen without spaces to join, or a minus sign to take away", $"{before} {after} or {before} \u2212 {away}");
    }

    internal static LengthReading.Refused FractionOverOne(
        string text, int start, int fraction, int end, LengthTextRatio whole, LengthTextRatio over)
    {
        var sum = whole + over;
        var (units, rest) = (sum.Numerator / sum.Denominator, sum.Numerator % sum.Denominator);
        var nearest = rest == 0 ? Figures(units) : $"{Figures(units)} {Figures(rest)}/{Figures(sum.Denominator)}";
        return new(text, $"a fraction under 1 in place of {text[fraction..end]}", text[..start] + nearest + text[end..]);
    }

    internal static LengthReading.Refused TwoNumbers(string text, int start, int end, LengthTextToken next, LengthUnit job)
    {
        var (one, other) = (text[start..end], text[next.Start..next.End]);
        var nearest = other.Length == 3 ? one + other : job == LengthUnit.Inch ? $"{one}' {other}\"" : $"{one}.{other}";
        var fits = next.End == text.Length && one.All(char.IsAsciiDigit) && other.All(char.IsAsciiDigit)
            && (job != LengthUnit.Inch || other.Length == 3 || next.Value.Numerator < 12);
        return new(text, $"one number, or a unit or sign between {one} and {other}", fits ? text[..start] + nearest : null);
    }

    internal static LengthReading.Refused UnitMissing(string text, LengthTextPart part, LengthTextPart next)
    {
        var expected = $"a unit after {text[next.Start..next.End]}";
        if (part is { Unit: LengthTextUnit.Metre, Whole: true })
        {
            return new(text, expected, $"{text[..next.End]} cm{text[next.End..]} or {text[..next.End]} mm{text[next.End..]}");
        }

        var fraction = part is { Unit: LengthTextUnit.Inch, Whole: true } && next.Spelling == LengthTextSpelling.Fraction;
        return new(text, expected, fraction ? $"{text[..part.Start]}{Figures(part.Number.Numerator)} {text[next.Start..next.End]} in{text[next.End..]}" : null);
    }

    internal static LengthReading.Refused TwoTapes(string text, int at) =>
        new(text, "one kind of unit, or a sign between", $"{text[..at].TrimEnd()} + {text[at..]}");

    internal static LengthReading.Refused LargerFirst(string text) => new(text, "the larger unit first, each unit once", null);

    internal static LengthReading.Refused WholeFirst(string text, int at, LengthTextUnit unit) =>
        new(text, $"a whole number of {LengthTextUnits.Word(unit)} where a smaller unit follows", $"{text[..at].TrimEnd()} + {text[at..]}");

    internal static LengthReading.Refused Carries(string text, int start, LengthTextPart part, LengthTextPart next, LengthTextRatio steps)
    {
        var (one, other) = (LengthTextUnits.Word(part.Unit), LengthTextUnits.Word(next.Unit));
        var per = LengthTextUnits.Steps(part.Unit) / LengthTextUnits.Steps(next.Unit);
        var length = Length.FromSteps((long)steps.Rounded());
        var nearest = LengthTextUnits.IsImperial(part.Unit)
            ? LengthText.FeetNearest(length, new(LengthUnit.Inch, Length.FromInches(0, 1, 128)))
            : LengthText.ExactMillimetres(length) + " mm";
        return new(text, $"less than {Figures(per)} {other} after the {one}", text[..start] + nearest + text[next.End..]);
    }

    internal static LengthReading.Refused Area(string text) => new(text, "a count on one side of x; a length times a length is an area", null);

    internal static LengthReading.Refused DividedByLength(string text) => new(text, "a count to divide by, not a length", null);

    internal static LengthReading.Refused CountTwoWays(string text, int first, int second, bool firstIsPlain)
    {
        var inches = firstIsPlain ? text.Insert(second, " in") : text.Insert(first, " in");
        var millimetres = firstIsPlain ? text.Insert(first, " mm") : text.Insert(second, " mm");
        return new(text, "a unit that says which number is the length", $"{millimetres} or {inches}");
    }

    internal static LengthReading.Refused DivisionOrInches(string text) =>
        new(text, "÷ to divide, or a fraction with its unit", $"{text.Replace("/", " ÷ ", StringComparison.Ordinal)} or {text} in");

    internal static LengthReading.Refused UnitTwoWays(string text, List<int> ends, LengthTextUnit one, LengthTextUnit other) =>
        new(text, "a unit after every number of the sum", $"{With(text, ends, one)} or {With(text, ends, other)}");

    private static string With(string text, List<int> ends, LengthTextUnit unit)
    {
        for (var i = ends.Count - 1; i >= 0; i--) text = text.Insert(ends[i], " " + LengthTextUnits.Word(unit));
        return text;
    }

    private static string Example(LengthUnit job) =>
        job == LengthUnit.Inch ? "a length, such as 40 1/2, 3' 4 1/2\" or 1028 mm" : "a length, such as 1028, 102.8 cm or 40 1/2 in";

    private static string Figures(Int128 number) => number.ToString(CultureInfo.InvariantCulture);
}
