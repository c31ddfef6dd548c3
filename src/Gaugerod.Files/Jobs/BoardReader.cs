using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads boards as they are bought, and how faces are boarded.</summary>
internal static class BoardReader
{
    private const int MostStuds = 200;

    /// <summary>A board: its name even where the rest could not be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="values">Takes what is wrong; knows the job's supplies.</param>
    /// <param name="names">The names taken so far.</param>
    public static (string? Name, BoardProduct? Board) Product(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, BoardForms.Board, values) is not { } fields) return (null, null);
        var inches = values.Unit == LengthUnit.Inch;
        var name = names.Take(fields["name"], values);
        var (width, length, thickness) = (fields.Length("width", LengthRange.BoardSide), fields.Length("length", LengthRange.BoardSide), fields.Length("thickness", LengthRange.Layer, Length.Zero));
        var gap = fields.Length("gap", LengthRange.Gap, inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3));
        var apart = fields.Length("screwsApart", LengthRange.ScrewsApart, inches ? Length.FromInches(8) : Length.FromMillimetres(200));
        var inset = fields.Length("inset", LengthRange.Inset, inches ? Length.FromInches(0, 1, 2) : Length.FromMillimetres(12));
        var (screws, tape) = (values.Supplies.Named(fields["screws"], values, SupplyKind.Screws), values.Supplies.Named(fields["tape"], values, SupplyKind.Tape));
        var (breakage, mortar) = (ProductReader.Extra(fields, "breakage"), Mortar(fields["tapeMortar"], values));
        if (width > length)
        {
            values.Log.AddSaid(fields["width"]!, LengthText.Finer(width.Value, values.Tape), $"the shorter side, no more than the length of {LengthText.Finer(length.Value, values.Tape)}", $"\"width\": \"{LengthText.Exact(length.Value, values.Tape)}\", \"length\": \"{LengthText.Exact(width.Value, values.Tape)}\"");
            return (name, null);
        }

        var lost = (screws is null) != (fields["screws"] is null) || (tape is null) != (fields["tape"] is null) || (mortar is null) != (fields["tapeMortar"] is null);
        return (name, lost || name is null || width is not { } w || length is not { } l
            ? null
            : new(name, w, l, thickness) { Gap = gap, ScrewsApart = apart, Inset = inset, Screws = screws, Tape = tape, TapeMortar = mortar, Breakage = breakage });
    }

    private static SeamMortar? Mortar(Entry? entry, Values values)
    {
        if (Fields.Open(entry, BoardForms.TapeMortar, values) is not { } fields) return null;
        var (of, width, thickness) = (values.Supplies.Named(fields["of"], values, SupplyKind.Mortar), fields.Length("width", LengthRange.SeamWidth), fields.Length("thickness", LengthRange.Notch with { What = "a thickness" }));
        return of is null || width is not { } wide || thickness is not { } thick ? null : new(of, wide, thick);
    }

    /// <summary>How a face is boarded, null for not at all, and whether what stands there could be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="values">Takes what is wrong; knows the job's boards.</param>
    public static (BoardRequest? Board, bool Understood) Face(Entry? entry, Values values)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, BoardForms.Boarding, values) is not { } fields) return (null, false);
        var inches = values.Unit == LengthUnit.Inch;
        var of = KnownNames.Known(fields["of"], values, "a board of this job", values.Boards);
        var (studs, understood) = Studs(fields["studs"], values);
        var lay = fields.Word("lay", Words.BoardLays, BoardLay.Either);
        var foot = fields.Length("foot", LengthRange.Gap, inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(6));
        var edges = fields.Length("edges", LengthRange.Gap, inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3));
        var wet = fields.Length("wet", LengthRange.Size);
        return of is null || !understood || (wet is null) != (fields["wet"] is null) ? (null, false) : (new(of) { Studs = studs, Lay = lay, Foot = foot, Edges = edges, Wet = wet }, true);
    }

    private static (Studs? Studs, bool Understood) Studs(Entry? entry, Values values)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, BoardForms.Studs, values) is not { } fields) return (null, false);
        var (from, spacing) = (fields.Length("from", LengthRange.Position), fields.Length("spacing", LengthRange.StudSpacing));
        var items = fields.Items("at");
        var at = items.Select(item => values.Length(item, LengthRange.Position)).ToList();
        if (items.Count > MostStuds) values.Log.AddSaid(fields["at"]!, $"{Values.Number(items.Count)} studs", $"at most {Values.Number(MostStuds)}");
        var width = fields.Length("width", LengthRange.StudWidth, values.Unit == LengthUnit.Inch ? Length.FromInches(1, 1, 2) : Length.FromMillimetres(38));
        var level = fields.Word("run", Words.StudsRun, false);
        if ((fields["from"] is null) != (fields["spacing"] is null) || (fields["from"] is null && items.Count == 0))
        {
            var said = fields["from"] is not null ? "\"from\" without \"spacing\"" : fields["spacing"] is not null ? "\"spacing\" without \"from\"" : "studs without places";
            values.Log.AddSaid(entry, said, "\"from\", the middle of the first stud, with \"spacing\"; or \"at\", a list of all middles", values.Example("{ \"from\": \"18\", \"spacing\": \"18\" }"));
            return (null, false);
        }

        return at.Contains(null) || items.Count > MostStuds || (from is null) != (fields["from"] is null) || (spacing is null) != (fields["spacing"] is null)
            ? (null, false)
            : (new() { From = from, Apart = spacing, At = at.OfType<Length>().ToSequence(), Width = width, RunLevel = level }, true);
    }
}
