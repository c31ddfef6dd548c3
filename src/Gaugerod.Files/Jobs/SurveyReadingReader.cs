using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what was read between the corners of a survey.</summary>
/// <param name="spots">What a reading may name.</param>
/// <param name="accuracy">How far off an instrument's readings are.</param>
/// <param name="values">Takes what is wrong.</param>
internal sealed class SurveyReadingReader(SurveySpots spots, Func<Instrument, Length> accuracy, Values values)
{
    private const string AWay = "\"from\" and \"to\", or \"corner\" for three-four-five, \"side\" and \"to\" for an offset, or \"strings\" that cross";

    public SurveyReading? Read(Entry entry)
    {
        if (Fields.Open(entry, Forms.SurveyReading, values) is not { } fields) return null;
        var ways = new[] { "from", "corner", "side", "strings" }.Where(way => fields[way] is not null).ToList();
        if (ways is not [var way])
        {
            values.Log.AddSaid(entry, ways.Count == 0 ? "a reading that says not from where" : $"a reading with {Values.AllOf(ways)}", AWay);
            return null;
        }

        var read = way switch
        {
            "from" => Between(fields),
            "corner" => Square(fields),
            "side" => Offset(fields),
            _ => Strings(fields),
        };
        var held = read?.As is ReadAs.Plumb or ReadAs.Level || fields["held"] is not null;
        var value = fields.Length("is", held ? LengthRange.Position : LengthRange.Size);
        var by = values.Word(fields["by"], Words.Instruments) ?? read?.As switch { ReadAs.Level => Instrument.Level, ReadAs.Plumb => Instrument.Plumb, _ => Instrument.Tape };
        var within = fields["within"] is null ? accuracy(by) : fields.Length("within", LengthRange.Accuracy);
        return read is not { } found || value is not { } said || within is not { } off ? null : new(found.As, found.First, found.Second, said, off) { Third = found.Third };
    }

    public ComesOff? ComesOff(Entry entry)
    {
        if (Fields.Open(entry, Forms.ComesOff, values) is not { } fields) return null;
        var (side, thick) = (spots.Side(fields["side"]), fields.Length("is", LengthRange.Layer));
        var within = fields.Length("within", LengthRange.Accuracy, accuracy(Instrument.Tape));
        return side is { } from && thick is { } thickness ? new(from, thickness, within) : null;
    }

    public SideReadIn? Same(Entry entry)
    {
        if (Fields.Open(entry, Forms.SharedSide, values) is not { } fields) return null;
        return new(spots.Side(fields["side"]), fields["face"], fields["as"], fields.Length("within", LengthRange.Accuracy, accuracy(Instrument.Tape)));
    }

    private (ReadAs As, SurveySpot First, SurveySpot Second, SurveySpot Third)? Between(Fields fields)
    {
        if (fields["to"] is null) fields.Missing("to", "a corner or a mark");
        var first = spots.Read(fields["from"]);
        var second = spots.Read(fields["to"], start: first);
        var held = values.Word(fields["held"], Words.Held);
        if (first is not { } from || second is not { } to) return null;
        if (from == to)
        {
            values.Log.AddSaid(fields["to"]!, "the place it is read from", "another corner or spot");
            return null;
        }

        // The level line is as long as the wall: a tape reaches it plumb.
        var toLine = spots.IsLine(from) || spots.IsLine(to);
        if (toLine && held == ReadAs.Level)
        {
            values.Log.Add(fields["held"]!, "\"plumb\": the level line is reached straight up or down", "\"plumb\"");
            return null;
        }

        return (toLine ? ReadAs.Plumb : held ?? ReadAs.Straight, from, to, default);
    }

    private (ReadAs As, SurveySpot First, SurveySpot Second, SurveySpot Third)? Square(Fields fields)
    {
        if (spots.Corner(fields["corner"]) is not { } corner) return null;
        var (usual, other) = values.Unit == LengthUnit.Inch ? (Length.FromInches(36), Length.FromInches(48)) : (Length.FromMillimetres(900), Length.FromMillimetres(1200));
        if (fields["legs"] is { } legs)
        {
            if (legs is not Entry.List { Items: [var one, var two] })
            {
                values.Log.Add(legs, "two lengths, to the next corner and to the one before");
                return null;
            }

            if (values.Length(one, LengthRange.Size) is not { } next || values.Length(two, LengthRange.Size) is not { } before) return null;
            (usual, other) = (next, before);
        }

        return (ReadAs.Straight, new(corner, spots.After(corner), usual), new(corner, spots.Before(corner), other), default);
    }

    private (ReadAs As, SurveySpot First, SurveySpot Second, SurveySpot Third)? Offset(Fields fields)
    {
        if (fields["to"] is null) fields.Missing("to", "a corner or a spot");
        var (side, to) = (spots.Two(fields["side"], "two corners [ , ]"), spots.Read(fields["to"], line: false));
        return side is not var (from, towards) || to is not { } spot ? null : (ReadAs.Off, new(from, towards, Length.Zero), spot, default);
    }

    private (ReadAs As, SurveySpot First, SurveySpot Second, SurveySpot Third)? Strings(Fields fields)
    {
        if (fields["strings"] is not Entry.List { Items: [var one, Entry.List { Items: [var start, var end] }] })
        {
            values.Log.Add(fields["strings"]!, "two strings, the first measured along: [[\"A\", \"C\"], [\"B\", \"D\"]]");
            return null;
        }

        var (along, from, to) = (spots.Two(one, "two corners [ , ]"), spots.Read(start, line: false), spots.Read(end, line: false));
        return along is not var (first, last) || from is not { } begin || to is not { } stop ? null : (ReadAs.Strings, new(first, last, Length.Zero), begin, stop);
    }
}
