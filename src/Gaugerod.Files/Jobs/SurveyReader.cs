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
/// <param name="Survey">The survey; null when it cannot be used.</param>
/// <param name="Corners">How many corners the file gives, even when they cannot be used; as many as sides.</param>
internal sealed record SurveyReadIn(FaceSurvey? Survey, int? Corners);

/// <summary>Reads a shape's survey: its corners, and what was read between them.</summary>
internal static class SurveyReader
{
    private const int MostCorners = 60;
    private const int MostReadings = 400;

    public static SurveyReadIn Read(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.Survey, values) is not { } fields) return new(null, null);
        var names = new Uniques("the survey's corners and spots", false, SurveySpots.LevelLine);
        var items = fields.Items("corners");
        if (fields["corners"] is Entry.List && items.Count is < 3 or > MostCorners)
        {
            values.Log.AddSaid(fields["corners"]!, string.Create(CultureInfo.InvariantCulture, $"{items.Count} corners"), string.Create(CultureInfo.InvariantCulture, $"3 to {MostCorners} corners"));
            return new(null, null);
        }

        var corners = items.Select(item => Corner(item, values, names)).ToList();
        var spots = fields.Items("spots").Select(item => names.Take(item, values)).ToList();
        var taken = fields.Items("readings");
        if (fields["readings"] is Entry.List && taken.Count is < 1 or > MostReadings)
        {
            values.Log.AddSaid(fields["readings"]!, string.Create(CultureInfo.InvariantCulture, $"{taken.Count} readings"), string.Create(CultureInfo.InvariantCulture, $"1 to {MostReadings} readings"));
            return new(null, items.Count);
        }

        var accuracies = Fields.Open(fields["accuracy"], Forms.Accuracy, values);
        var known = new SurveySpots(corners.ConvertAll(c => c?.Name), spots, values);
        var reader = new SurveyReadingReader(known, instrument => Accuracy(accuracies, instrument, values), values);
        var readings = taken.Select(reader.Read).ToList();
        var off = fields.Items("comesOff").Select(item => reader.ComesOff(item)).ToList();
        if (corners.Contains(null) || spots.Contains(null) || readings.Contains(null) || off.Contains(null) || corners.Count == 0 || readings.Count == 0) return new(null, items.Count);
        var near = corners.FindAll(corner => corner!.Near is not null).Count;
        if (near > 0 && near < corners.Count)
        {
            var without = corners.FindIndex(corner => corner!.Near is null);
            values.Log.AddSaid(items[without], $"\"{corners[without]!.Name}\" without \"near\"", "\"near\" for every corner or for none", "{ \"name\": " + Values.Quoted(corners[without]!.Name) + ", \"near\": [x, y] }");
            return new(null, items.Count);
        }

        return new(new(corners.OfType<SurveyCorner>().ToSequence(), spots.OfType<string>().ToSequence(), readings.OfType<SurveyReading>().ToSequence()) { ComesOff = off.OfType<ComesOff>().ToSequence() }, items.Count);
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
