using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>Says what a survey's readings are worth: what was assumed, which of them disagree, which nothing checks, and what to read next.</summary>
/// <param name="survey">The survey.</param>
/// <param name="adjusted">Its readings weighed; what was assumed stands after what was read.</param>
/// <param name="read">How many were read.</param>
/// <param name="suspects">Those of which one must be in error.</param>
/// <param name="words">Says readings.</param>
/// <param name="place">What is being read.</param>
internal sealed class SurveyFindings(FaceSurvey survey, Adjusted adjusted, int read, int[] suspects, SurveyWords words, ReadingPlace place)
{
    private const string Source = "W. Baarda, A testing procedure for use in geodetic networks, 1968; from memory";

    /// <summary>What else is read, is read with a tape: common practice, no source.</summary>
    private readonly Taken _taken = place.Tape.Unit == LengthUnit.Inch ? new(1.5875, 25.4, 304.8) : new(1.5, 10, 300);

    // All that a tape can reach is tried for these: once, for the findings and for what is weighed.
    private (bool Known, Reading? Next) _tells, _checks;

    private readonly Reading[] _assumed = [.. adjusted.Network.Readings.Skip(read)];

    private readonly int[] _unchecked = [.. Enumerable.Range(0, read).Where(adjusted.IsUnchecked)];

    public IEnumerable<Finding> All()
    {
        foreach (var assumed in _assumed)
        {
            yield return place.Note("assumed", $"Too few readings: {words.Taken(assumed)} is assumed. To settle it, {words.Settled(assumed)}.");
        }

        if (suspects.Length > 0) yield return Disagree();
        if (_assumed.Length == 0 && _unchecked.Length > 0)
        {
            yield return place.Note("unchecked", $"Nothing checks {Listed(_unchecked.Select(i => words.Said(adjusted.Network.Readings[i])))}: a slip there would not show.{ToCheck()}");
        }
    }

    public WeighedSurvey Weighed() => new(
        place.Face,
        Enumerable.Range(0, survey.LevelLine).Select(i => new PlacedSpot(survey.NameOf(i), Placed(i))).ToSequence(),
        Enumerable.Range(0, read).Select(Weighed).ToSequence(),
        Enumerable.Range(0, survey.Corners.Count).Select(Side).ToSequence(),
        adjusted.Beyond)
    {
        Assumed = _assumed.Select(assumed => words.Taken(assumed)).ToSequence(), Suspects = suspects.ToSequence(),
        Next = suspects.Length > 1 ? ToTell() ?? "" : _assumed.Length > 0 ? words.Settled(_assumed[0]) : _unchecked.Length > 0 ? Check() ?? "" : "",
        Asked = (suspects.Length > 1 ? Tells : _assumed.Length > 0 ? Settling(_assumed[0]) : _unchecked.Length > 0 ? Checks : null) is { } asked ? SurveyNetwork.Asked(asked) : null,
    };

    // A corner taken as square is read across, between the corners beside it.
    private static Reading Settling(Reading assumed) => assumed.Of == ReadingOf.Square ? Reading.Length(assumed.First.Towards, assumed.Second.From, 0, assumed.Accuracy) : assumed;

    private Finding Disagree()
    {
        var worst = suspects.MaxBy(i => Math.Abs(adjusted.Standardised(i)));
        var size = Math.Abs(adjusted.Standardised(worst)).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);
        var byOthers = suspects.Select(i => $"{words.Said(adjusted.Network.Readings[i])}: read {place.Say(survey.Readings[i].Value)}, by the others {place.Say(SurveyNetwork.Rounded(adjusted.ByOthers(i)))}");
        var text = suspects.Length == 1
            ? $"One reading disagrees with the others: {byOthers.First()}. Read it again."
            : $"The readings disagree, and nothing tells which is in error. One of these: {string.Join("; ", byOthers)}. Read them again{(ToTell() is { } next ? $", or {next}" : "")}.";
        return new(FindingLevel.Warn, "readings-agree", place.Face, text, "3.29", size, Source);
    }

    private Reading? Tells => Once(ref _tells, () => NextReading.ToTell(adjusted, suspects, survey.Corners.Count, _taken));

    private Reading? Checks => Once(ref _checks, () => NextReading.ToCheck(adjusted, survey.Corners.Count, _taken));

    private static Reading? Once(ref (bool Known, Reading? Next) kept, Func<Reading?> find)
    {
        if (!kept.Known) kept = (true, find());
        return kept.Next;
    }

    private string? ToTell() => Tells is { } next ? words.Asked(next) : null;

    private string? Check() => Checks is { } next ? words.Asked(next) : null;

    private string ToCheck() => Check() is { } next ? $" To check, {next}." : "";

    private WeighedReading Weighed(int reading)
    {
        var (of, taken) = (adjusted.Network.Readings[reading], survey.Readings[reading]);
        return new(
            words.Said(of), taken.Value, SurveyNetwork.Rounded(adjusted.Value(of)), SurveyNetwork.Rounded(adjusted.Deviation(of)),
            adjusted.Redundancy(reading), adjusted.Standardised(reading))
        {
            ByOthers = adjusted.IsUnchecked(reading) ? null : SurveyNetwork.Rounded(adjusted.ByOthers(reading)),
        };
    }

    private SureLength Side(int from)
    {
        var side = Reading.Length(from, (from + 1) % survey.Corners.Count, 0, 1);
        var (square, value) = (adjusted.Deviation(side) * adjusted.Deviation(side), adjusted.Value(side));

        // What comes off the sides at its ends makes it longer, nearly by as much: corners are nearly square.
        foreach (var off in survey.ComesOff.Where(off => off.Side == (from + 1) % survey.Corners.Count || off.Side == (from + survey.Corners.Count - 1) % survey.Corners.Count))
        {
            value += SurveyNetwork.Millimetres(off.Thickness);
            square += SurveyNetwork.Millimetres(off.Accuracy) * SurveyNetwork.Millimetres(off.Accuracy);
        }

        return new(words.Said(side), SurveyNetwork.Rounded(value), SurveyNetwork.Rounded(Math.Sqrt(square)));
    }

    private Point Placed(int spot) => new(SurveyNetwork.Rounded(adjusted.Places[2 * spot]), SurveyNetwork.Rounded(adjusted.Places[(2 * spot) + 1]));

    private static string Listed(IEnumerable<string> all)
    {
        var said = all.ToList();
        return said.Count == 1 ? said[0] : $"{string.Join("; ", said.Take(said.Count - 1))} or {said[^1]}";
    }
}
