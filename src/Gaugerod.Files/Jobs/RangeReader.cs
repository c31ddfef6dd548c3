using Gaugerod.Engine;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what a measure may be: the least and the most, what was asked between them.</summary>
internal static class RangeReader
{
    /// <summary>The range, null for none, and whether what stands there could be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="asked">What was asked.</param>
    /// <param name="under">What heights count from.</param>
    /// <param name="values">Reads lengths.</param>
    /// <param name="isSize">Whether it is a size, of which there is no zero.</param>
    public static (Span? Range, bool Understood) Read(Entry? entry, Length asked, Length under, Values values, bool isSize = false)
    {
        if (entry is null) return (null, true);
        if (entry is not Entry.List { Items: [var least, var most] })
        {
            values.Log.Add(entry, "two lengths, the least and the most [ , ]");
            return (null, false);
        }

        if (values.Length(least, LengthRange.Position) is not { } from || values.Length(most, LengthRange.Position) is not { } to) return (null, false);
        var range = new Span(from + under, to + under);
        var said = LengthText.Finer(asked - under, values.Tape);
        if (isSize && from <= Length.Zero)
        {
            var some = LengthText.Finer(Length.Min(values.Tape.Mark, asked), values.Tape);
            values.Log.AddSaid(entry, $"a range from {LengthText.Finer(from, values.Tape)} to {LengthText.Finer(to, values.Tape)}", "sizes of more than 0", $"[{some}, {LengthText.Finer(Length.Max(to, asked), values.Tape)}]");
            return (null, false);
        }

        if (range.Holds(asked)) return (range, true);
        values.Log.AddSaid(
            entry, $"a range from {LengthText.Finer(from, values.Tape)} to {LengthText.Finer(to, values.Tape)}",
            $"the least first, then the most, and what is asked, {said}, between them", $"[{LengthText.Finer(Length.Min(Length.Min(from, to), asked - under), values.Tape)}, {LengthText.Finer(Length.Max(Length.Max(from, to), asked - under), values.Tape)}]",
            [Mend.Of(entry.Path, Length.Min(Length.Min(from, to), asked - under), Length.Max(Length.Max(from, to), asked - under), values.Tape)]);
        return (null, false);
    }

    /// <summary>Whether a group of ranges leaves anything open; one that does not, and says so of nothing else, is refused.</summary>
    public static bool IsEmpty(Entry entry, Fields fields, Form form)
    {
        if (form.Names.Any(name => fields[name] is not null)) return false;
        fields.Values.Log.AddSaid(entry, "a range of nothing", $"one or more of {Values.AllOf(form.Names)}", "leave the range out: it then stands as it is asked");
        return true;
    }
}
