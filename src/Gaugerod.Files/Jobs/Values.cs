using System.Globalization;
using Gaugerod.Engine;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads single values. What cannot be used goes to the log and comes back as null, so that reading can go on.</summary>
/// <param name="log">Where faults go.</param>
/// <param name="unit">What a bare number is; null when the file does not say, and then no size is judged.</param>
internal sealed class Values(FaultLog log, LengthUnit? unit)
{
    private const int LongestName = 60;
    private const int LargestDenominator = 64;

    public FaultLog Log { get; } = log;

    /// <summary>The trims that edges and bands may name; none until they are read.</summary>
    public KnownTrims Trims { get; set; } = KnownTrims.None;

    /// <summary>The names of the boards that faces may name, null for one that could not be read; none until they are read.</summary>
    public IReadOnlyList<string?> Boards { get; set; } = [];

    /// <summary>The supplies that faces and runs may name.</summary>
    public KnownSupplies Supplies { get; set; } = KnownSupplies.None;

    public LengthUnit Unit { get; } = unit ?? LengthUnit.Millimetre;

    public Tape Tape => Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;

    public Length? Length(Entry? entry, LengthRange range)
    {
        var text = entry switch
        {
            null => null,
            Entry.Text t => t.Value,
            Entry.Number n => n.Value,
            _ => "",
        };
        if (text is null) return null;
        if (entry is not (Entry.Text or Entry.Number))
        {
            Log.Add(entry!, Example(Forms.ALength));
            return null;
        }

        switch (LengthText.Read(text, Unit))
        {
            case LengthReading.Understood { Value: var length } read when unit is null || range.Holds(length):
                if (unit is not null && read.FractionAsInches) Log.Doubt(entry, DoubtOf.Fraction, AsInches(entry, read), "a unit behind it in a job in mm", EitherUnit(text, read));
                return length;
            case LengthReading.Understood { Value: var length, FractionAsInches: true } read:
                var nearest = read.InMillimetres is { } meant && range.Holds(meant) ? Millimetres(meant) : range.NearestTo(length, Tape);
                Log.AddSaid(entry, AsInches(entry, read), range.Say(Tape), nearest, nearest is null ? [] : [Mend.Of(entry.Path, nearest)]);
                return null;
            case LengthReading.Understood { Value: var length }:
                Log.Add(entry, range.Say(Tape), range.NearestTo(length, Tape));
                return null;
            case LengthReading.Refused refused:
                Log.Add(entry, refused.Expected, refused.Nearest);
                return null;
            default:
                return null;
        }
    }

    private string AsInches(Entry entry, LengthReading.Understood read) => $"{Log.Shown(entry)}, read as inches: {Millimetres(read.Value)}";

    private static string? EitherUnit(string text, LengthReading.Understood read) =>
        read.InMillimetres is { } millimetres && !text.Any(c => c is '+' or '*' or 'x' or '×' or '÷') ? $"{text.Trim()} in or {Millimetres(millimetres)}" : null;

    private static string Millimetres(Length length) => LengthText.Finer(length, Tape.Millimetres);

    public int? Whole(Entry? entry, int least, int most)
    {
        if (entry is null) return null;
        var written = (entry as Entry.Number)?.Value;
        if (written is not null && int.TryParse(written, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) && whole >= least && whole <= most) return whole;
        var expected = string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");
        Log.Add(entry, expected, NearestWhole(written ?? (entry as Entry.Text)?.Value, least, most));
        return null;
    }

    /// <summary>Degrees, to a thousandth: a number, or text with or without a degree sign.</summary>
    public Angle? Degrees(Entry? entry, int least, int most)
    {
        if (entry is null) return null;
        var written = (entry as Entry.Number)?.Value ?? (entry as Entry.Text)?.Value.Trim().TrimEnd('°');
        var read = decimal.TryParse(written, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees);
        if (read && degrees >= least && degrees <= most && decimal.Round(degrees, 3) == degrees) return Angle.FromThousandths((int)(degrees * 1000));
        var expected = string.Create(CultureInfo.InvariantCulture, $"degrees from {least} to {most}, to a thousandth");
        // A minus sign is taken for a slip.
        var meant = degrees < least && -degrees >= least && -degrees <= most ? -degrees : degrees;
        Log.Add(entry, expected, read ? Math.Clamp(decimal.Round(meant, 3), least, most).ToString("0.###", CultureInfo.InvariantCulture) : null);
        return null;
    }

    public static string Number(Angle angle) => angle.Degrees.ToString("0.###", CultureInfo.InvariantCulture);

    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    public bool? Truth(Entry? entry)
    {
        if (entry is Entry.Truth truth) return truth.Value;
        if (entry is not null) Log.Add(entry, "true or false", Near.Of((entry as Entry.Text)?.Value ?? "", ["true", "false"]));
        return null;
    }

    public T? Word<T>(Entry? entry, Words<T> words)
        where T : struct
    {
        if (entry is null) return null;
        var text = (entry as Entry.Text)?.Value;
        if (text is not null && words.Read(text) is { } value) return value;
        Log.Add(entry, OneOf(words.All), Quoted(words.Nearest(text ?? "")));
        return null;
    }

    /// <summary>So many letters text of one's own may have: some six pages.</summary>
    public const int MostLetters = 20_000;

    /// <summary>So many letters stand in a row of a table, which is to fit on a sheet.</summary>
    public const int MostInRow = 1000;

    /// <summary>Text of one's own, of several lines; null where there is none or it cannot be used.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="most">So many letters at the most: what stands in a row of a table must fit on a sheet.</param>
    public string? Note(Entry? entry, int most = MostLetters)
    {
        if (entry is Entry.Text { Value.Length: var letters } && letters > most)
        {
            Log.AddSaid(entry, $"{Number(letters)} letters", $"text of at most {Number(most)} letters");
            return null;
        }

        if (entry is Entry.Text { Value: var text } && !text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'))) return text;
        if (entry is not null) Log.Add(entry, "printable text in double quotes");
        return null;
    }

    public string? Name(Entry? entry)
    {
        if (entry is null) return null;
        if (entry is not Entry.Text { Value: var name })
        {
            Log.Add(entry, "a name in double quotes");
            return null;
        }

        var trimmed = name.Trim();
        if (trimmed.Length == 0 || name.Length > LongestName || name.Any(Unprintable) || !name.Any(Seen)) Log.Add(entry, "a name of 1 to 60 printable characters");
        else if (trimmed.Length != name.Length) Log.Add(entry, "a name without blanks before or after it", Quoted(trimmed));
        else return name;
        return null;
    }

    /// <summary>A part of a tile: more than nothing, less than one.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="whole">What would do for a whole tile.</param>
    /// <param name="mend">What to put for that.</param>
    public (int Numerator, int Denominator)? Part(Entry? entry, string whole, Mend? mend = null)
    {
        if (entry is null) return null;
        if (entry is Entry.Text { Value: var text } && text.Split('/') is [var over, var under]
            && int.TryParse(over, NumberStyles.None, CultureInfo.InvariantCulture, out var numerator)
            && int.TryParse(under, NumberStyles.None, CultureInfo.InvariantCulture, out var denominator)
            && numerator >= 1 && denominator > numerator && denominator <= LargestDenominator)
        {
            var shared = Shared(numerator, denominator);
            return (numerator / shared, denominator / shared);
        }

        var part = PartOf((entry as Entry.Text)?.Value ?? (entry as Entry.Number)?.Value);
        const string Expected = "a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\"";
        if (part == 1) Log.AddSaid(entry, Log.Shown(entry), Expected, whole, mend is null ? [] : [mend]);
        else Log.Add(entry, Expected, NearestPart(part > 1 && mend is not null ? Within(part.Value) : part));
        return null;
    }

    /// <summary>The greatest number that divides both.</summary>
    private static int Shared(int one, int other) => other == 0 ? one : Shared(other, one % other);

    // Marks that turn the line round or part words unseen would spoil every sheet; the two joiners are part of some scripts.
    private static bool Unprintable(char c) => char.GetUnicodeCategory(c) switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
        UnicodeCategory.Format => c is not ('\u200C' or '\u200D'),
        _ => false,
    };

    private static bool Seen(char c) => !char.IsWhiteSpace(c) && c is not ('\u200C' or '\u200D');

    public static string OneOf(IEnumerable<string> words) => Listed(words, " or ");

    public static string AllOf(IEnumerable<string> words) => Listed(words, " and ");

    private static string Listed(IEnumerable<string> words, string last)
    {
        var all = words.Select(w => $"\"{w}\"").ToList();
        return all.Count < 2 ? string.Concat(all) : string.Join(", ", all.Take(all.Count - 1)) + last + all[^1];
    }

    /// <summary>An example of what could stand somewhere, in the job's unit.</summary>
    public string Example(string example) => unit == LengthUnit.Inch ? example : Forms.InMillimetres(example);

    public static string? Quoted(string? word) => word is null ? null : $"\"{word}\"";

    // 0.5, 33% and 50/100 are parts too, only not written as one says them.
    private static decimal? PartOf(string? text)
    {
        if (text?.Split('/') is [var over, var under]
            && decimal.TryParse(over, NumberStyles.None, CultureInfo.InvariantCulture, out var upper)
            && decimal.TryParse(under, NumberStyles.None, CultureInfo.InvariantCulture, out var lower)) return lower > 0 ? upper / lower : null;
        if (!decimal.TryParse(text?.TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return null;
        return text!.Contains('%', StringComparison.Ordinal) ? number / 100 : number;
    }

    // 33 is said for a third; 3/2 of a tile lies as half of one does.
    private static decimal Within(decimal part) => decimal.Truncate(part) == part ? part / 100 : part - decimal.Truncate(part);

    /// <summary>The plainest part near a number.</summary>
    private static string? NearestPart(decimal? number)
    {
        if (number is not ({ } part and > 0 and < 1)) return null;
        var parts = from under in Enumerable.Range(2, 7) from over in Enumerable.Range(1, under - 1) select (over, under);
        var (o, u) = parts.MinBy(p => Math.Abs(((decimal)p.over / p.under) - part));
        return string.Create(CultureInfo.InvariantCulture, $"\"{o}/{u}\"");
    }

    private static string? NearestWhole(string? text, int least, int most) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? Math.Clamp(decimal.Round(number), least, most).ToString("0", CultureInfo.InvariantCulture)
            : null;
}
