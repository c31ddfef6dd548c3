using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>Says what a survey's readings are worth: what was assumed, which of them disagree, which nothing checks, and what to read next.</summary>
/// <param name="room">All readings weighed, on this face and on those that share sides with it.</param>
/// <param name="part">The face.</param>
/// <param name="suspects">The readings of which one must be in error, on whichever face.</param>
/// <param name="words">Says readings.</param>
/// <param name="place">What is being read.</param>
internal sealed class SurveyFindings(JoinedNetwork room, NetworkPart part, int[] suspects, SurveyWords words, ReadingPlace place)
{
    private const string Source = "W. Baarda, A testing procedure for use in geodetic networks, 1968; from memory";

    /// <summary>What else is read, is read with a tape: common practice, no source.</summary>
    private readonly Taken _taken = place.Tape.Unit == LengthUnit.Inch ? new(1.5875, 25.4, 304.8) : new(1.5, 10, 300);

    // All that a tape can reach is tried for these: once, for the findings and for what is weighed.
    private (bool Known, Reading? Next) _tells, _checks;

    private readonly FaceSurvey _survey = part.Survey;

    private readonly Adjusted _adjusted = room.Adjusted!;

    // What was assumed stands after what was read.
    private readonly Reading[] _assumed = [.. room.Adjusted!.Network.Readings.Skip(room.Read.Readings.Count).Where(of => part.HasSpot(of.First.From))];

    private readonly int[] _unchecked = [.. Enumerable.Range(part.Reading, part.Survey.Readings.Count).Where(room.Adjusted.IsUnchecked)];

    private readonly int[] _own = [.. suspects.Where(part.HasReading)];

    public IEnumerable<Finding> All()
    {
        foreach (var assumed in _assumed)
        {
            yield return place.Note("assumed", $"Too few readings: {words.Taken(assumed)} is assumed. To settle it, {words.Settled(assumed)}.");
        }

        // It is told whole on the face that it may stand on first; that one may be in no run, so the others say it too.
        if (_own.Length > 0 && _own[0] == suspects[0]) yield return Disagree();
        else if (suspects.Length > 0) yield return Elsewhere();
        if (_assumed.Length == 0 && _unchecked.Length > 0)
        {
            yield return place.Note("unchecked", $"Nothing checks {Listed(_unchecked.Select(i => words.Said(_adjusted.Network.Readings[i])))}: a slip there would not show.{ToCheck()}");
        }
    }

    public WeighedSurvey Weighed() => new(
        place.Face,
        Enumerable.Range(0, _survey.LevelLine).Select(i => new PlacedSpot(_survey.NameOf(i), Placed(part.Spot + i))).ToSequence(),
        Enumerable.Range(0, _survey.Readings.Count).Select(Weighed).ToSequence(),
        Enumerable.Range(0, part.Corners).Select(Side).ToSequence(),
        _adjusted.Beyond)
    {
        With = room.Parts.Where(other => other != part).Select(other => other.Of.Face).ToSequence(),
        Assumed = _assumed.Select(assumed => words.Taken(assumed)).ToSequence(),
        Suspects = _own.Where(i => i < room.Read.Readings.Count - Shared).Select(i => i - part.Reading).ToSequence(),
        Elsewhere = _own.Length == 0 ? [] : suspects.Where(i => i >= room.Read.Readings.Count - Shared || !_own.Contains(i)).Select(i => words.Said(_adjusted.Network.Readings[i])).ToSequence(),
        Next = _own.Length > 0 && suspects.Length > 1 ? ToTell() ?? "" : _assumed.Length > 0 ? words.Settled(_assumed[0]) : _unchecked.Length > 0 ? Check() ?? "" : "",
        Asked = (_own.Length > 0 && suspects.Length > 1 ? Tells : _assumed.Length > 0 ? words.Settling(_assumed[0]) : _unchecked.Length > 0 ? Checks : null) is { } asked && part.HasSpot(asked.First.From)
            ? SurveyNetwork.Asked(asked.Past(-part.Spot))
            : null,
    };

    private int Shared => room.Parts.Sum(of => of.Sides.Length);

    private Finding Disagree()
    {
        var byOthers = suspects.Select(ByOthers);
        var text = suspects.Length == 1
            ? $"One reading disagrees with the others: {byOthers.First()}. Read it again."
            : $"The readings disagree, and nothing tells which is in error. One of these: {string.Join("; ", byOthers)}. Read them again{(ToTell() is { } next ? $", or {next}" : "")}.";
        return new(FindingLevel.Warn, "readings-agree", place.Face, text, "3.29", Size(), Source);
    }

    private Finding Elsewhere() => new(
        FindingLevel.Warn, "readings-elsewhere", place.Face,
        $"Readings that it is weighed with disagree. In error is one of {Listed(suspects.Select(i => words.Said(_adjusted.Network.Readings[i])))}.", "3.29", Size(), Source);

    private string Size() => suspects.Max(i => Math.Abs(_adjusted.Standardised(i))).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);

    private string ByOthers(int i)
    {
        var (of, others) = (_adjusted.Network.Readings[i], SurveyNetwork.Rounded(_adjusted.ByOthers(i)));
        var by = place.Say(of.Of == ReadingOf.Alike ? others.Abs() : others);
        return of.Of == ReadingOf.Alike ? $"{words.Said(of)}: they differ by {by}" : $"{words.Said(of)}: read {place.Say(SurveyNetwork.Rounded(of.Value))}, by the others {by}";
    }

    private Reading? Tells => Once(ref _tells, () => NextReading.ToTell(_adjusted, suspects, [part, .. room.Parts.Where(other => other != part && suspects.Any(other.HasReading))], _taken));

    private Reading? Checks => Once(ref _checks, () => NextReading.ToCheck(_adjusted, part, _taken));

    private static Reading? Once(ref (bool Known, Reading? Next) kept, Func<Reading?> find)
    {
        if (!kept.Known) kept = (true, find());
        return kept.Next;
    }

    private string? ToTell() => Tells is { } next ? words.Asked(next) : null;

    private string? Check() => Checks is { } next ? words.Asked(next) : null;

    private string ToCheck() => Check() is { } next ? $" To check, {next}." : "";

    private WeighedReading Weighed(int at)
    {
        var (reading, taken) = (part.Reading + at, _survey.Readings[at]);
        var of = _adjusted.Network.Readings[reading];
        return new(
            words.Said(of), taken.Value, SurveyNetwork.Rounded(_adjusted.Value(of)), SurveyNetwork.Rounded(_adjusted.Deviation(of)),
            _adjusted.Redundancy(reading), _adjusted.Standardised(reading))
        {
            ByOthers = _adjusted.IsUnchecked(reading) ? null : SurveyNetwork.Rounded(_adjusted.ByOthers(reading)),
        };
    }

    private SureLength Side(int from)
    {
        var side = Reading.Length(from, (from + 1) % part.Corners, 0, 1).Past(part.Spot);
        var (square, value) = (_adjusted.Deviation(side) * _adjusted.Deviation(side), _adjusted.Value(side));

        // What comes off the sides at its ends makes it longer, nearly by as much: corners are nearly square.
        foreach (var off in _survey.ComesOff.Where(off => off.Side == (from + 1) % part.Corners || off.Side == (from + part.Corners - 1) % part.Corners))
        {
            value += SurveyNetwork.Millimetres(off.Thickness);
            square += SurveyNetwork.Millimetres(off.Accuracy) * SurveyNetwork.Millimetres(off.Accuracy);
        }

        return new(words.Said(side), SurveyNetwork.Rounded(value), SurveyNetwork.Rounded(Math.Sqrt(square)));
    }

    private Point Placed(int spot) => new(SurveyNetwork.Rounded(_adjusted.Places[2 * spot]), SurveyNetwork.Rounded(_adjusted.Places[(2 * spot) + 1]));

    private static string Listed(IEnumerable<string> all)
    {
        var said = all.ToList();
        return said.Count == 1 ? said[0] : $"{string.Join("; ", said.Take(said.Count - 1))} or {said[^1]}";
    }
}
