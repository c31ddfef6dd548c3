using System.Globalization;
using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>What a reading is taken with.</summary>
internal enum Instrument
{
    Tape,
    Laser,
    Level,
    Plumb,
}

/// <summary>A survey as it was read.</summary>
/// <param name="Survey">The survey, without the sides it shares; null when it cannot be used.</param>
/// <param name="Corners">The corners' names, null for one that could not be read; as many as sides. Null when the file gives none.</param>
internal sealed record SurveyReadIn(FaceSurvey? Survey, IReadOnlyList<string?>? Corners)
{
    /// <summary>The sides that it shares with other faces.</summary>
    public IReadOnlyList<SideReadIn> Same { get; init; } = [];
}

/// <summary>A shared side as it was read, before the other face is known.</summary>
/// <param name="Side">The corner that it begins at; null when it cannot be used.</param>
/// <param name="Face">Where the other face's name stands.</param>
/// <param name="As">Where its corners on the other face stand.</param>
/// <param name="Within">How far the two lengths may differ.</param>
internal sealed record SideReadIn(int? Side, Entry? Face, Entry? As, Length Within);

/// <summary>Reads a shape's survey: its corners, and what was read between them.</summary>
internal static class SurveyReader
{
    private const int MostCorners = 60;
    private const int MostReadings = 400;

    public static SurveyReadIn Read(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.Survey, values) is not { } fields) return new(null, null);
        var taken = new Uniques("the survey's corners and spots", false, SurveySpots.LevelLine);
        var items = fields.Items("corners");
        if (fields["corners"] is Entry.List && items.Count is < 3 or > MostCorners)
        {
            values.Log.AddSaid(fields["corners"]!, string.Create(CultureInfo.InvariantCulture, $"{items.Count} corners"), string.Create(CultureInfo.InvariantCulture, $"3 to {MostCorners} corners"));
            return new(null, null);
        }

        var corners = items.Select(item => Corner(item, values, taken)).ToList();
        var spots = fields.Items("spots").Select(item => taken.Take(item, values)).ToList();
        var given = fields.Items("readings");
        if (fields["readings"] is Entry.List && given.Count is < 1 or > MostReadings)
        {
            values.Log.AddSaid(fields["readings"]!, string.Create(CultureInfo.InvariantCulture, $"{given.Count} readings"), string.Create(CultureInfo.InvariantCulture, $"1 to {MostReadings} readings"));
            return new(null, corners.ConvertAll(c => c?.Name));
        }

        var accuracies = Fields.Open(fields["accuracy"], Forms.Accuracy, values);
        var known = new SurveySpots(corners.ConvertAll(c => c?.Name), spots, values);
        var reader = new SurveyReadingReader(known, instrument => Accuracy(accuracies, instrument, values), values);
        var readings = given.Select(reader.Read).ToList();
        var off = fields.Items("comesOff").Select(item => reader.ComesOff(item)).ToList();
        var same = fields.Items("same").Select(item => reader.Same(item)).OfType<SideReadIn>().ToList();
        var names = corners.ConvertAll(c => c?.Name);
        if (corners.Contains(null) || spots.Contains(null) || readings.Contains(null) || off.Contains(null) || corners.Count == 0 || readings.Count == 0) return new(null, names) { Same = same };
        var near = corners.FindAll(corner => corner!.Near is not null).Count;
        if (near > 0 && near < corners.Count)
        {
            var without = corners.FindIndex(corner => corner!.Near is null);
            values.Log.AddSaid(items[without], $"\"{corners[without]!.Name}\" without \"near\"", "\"near\" for every corner or for none", "{ \"name\": " + Values.Quoted(corners[without]!.Name) + ", \"near\": [x, y] }");
            return new(null, names) { Same = same };
        }

        return new(new(corners.OfType<SurveyCorner>().ToSequence(), spots.OfType<string>().ToSequence(), readings.OfType<SurveyReading>().ToSequence()) { ComesOff = off.OfType<ComesOff>().ToSequence() }, names) { Same = same };
    }

    private static SurveyCorner? Corner(Entry item, Values values, Uniques names)
    {
        if (item is not Entry.Group) return names.Take(item, values) is { } plain ? new(plain, false, null) : null;
        if (Fields.Open(item, Forms.SurveyCorner, values) is not { } fields) return null;
        var (name, near) = (names.Take(fields["name"], values), fields["near"] is { } place ? CornerReader.Place(place, values) : null);
        return name is null || (fields["near"] is not null && near is null) ? null : new(name, fields.Word("is", Words.SurveyCorners, false), near);
    }

    /// <summary>How far off an instrument's readings are, where nothing else is said: common practice, no source.</summary>
    private static Length Accuracy(Fields? fields, Instrument instrument, Values values)
    {
        var usual = values.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Grid.HalfDown(Length.FromMillimetres(3));
        return fields?.Length(Words.Instruments.Say(instrument), LengthRange.Accuracy) ?? usual;
    }
}
