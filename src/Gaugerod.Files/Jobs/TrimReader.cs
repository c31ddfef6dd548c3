using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>The trims that edges and bands may name.</summary>
/// <param name="Trims">Their names, and those that could be read.</param>
/// <param name="EdgeJoint">The joint of edges that state none.</param>
internal sealed record KnownTrims(IReadOnlyList<(string? Name, TrimProduct? Trim)> Trims, Length EdgeJoint)
{
    public static KnownTrims None { get; } = new([], Length.Zero);

    /// <summary>How wide the trim is that is asked for; null where none is, or it could not be read.</summary>
    public Length? Width(TrimRequest? asked) => Named(asked?.Of)?.Width;

    /// <summary>The trim of a name; null where there is none, or it could not be read.</summary>
    public TrimProduct? Named(string? name) => name is null ? null : Trims.FirstOrDefault(trim => string.Equals(trim.Name, name, StringComparison.Ordinal)).Trim;
}

/// <summary>Reads trims as they are bought, and where they are asked for.</summary>
internal static class TrimReader
{
    public static (string? Name, TrimProduct? Trim) Product(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, Forms.Trim, values) is not { } fields) return (null, null);
        var inches = values.Unit == LengthUnit.Inch;
        var name = names.Take(fields["name"], values);
        var kind = values.Word(fields["kind"], Words.TrimKinds);
        var (stock, width) = (fields.Length("length", LengthRange.TrimLength), fields.Length("width", LengthRange.TrimWidth));
        var bar = fields.Word("sold", Words.Sold, kind == TrimKind.Profile);
        var joint = fields.Length("joint", LengthRange.Joint, bar ? Length.Zero : inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3));
        var said = fields.Length("least", LengthRange.Cut);
        // What most setters call a sliver; common practice, no source.
        var least = said ?? Length.Min(inches ? Length.FromInches(2) : Length.FromMillimetres(50), Length.FromSteps((stock ?? Length.Zero).Steps / 2));
        var (thickness, kerf) = (fields.Length("thickness", LengthRange.Layer, Length.Zero), fields.Length("kerf", LengthRange.Kerf, inches ? Length.FromInches(0, 1, 16) : Length.FromSteps(5120)));
        var (outside, inside, stop) = (fields.Length("outside", LengthRange.Cut), fields.Length("inside", LengthRange.Cut), fields.Length("stop", LengthRange.Cut));
        var (breakage, spares, percent) = (ProductReader.Extra(fields, "breakage"), ProductReader.Extra(fields, "spares"), values.Whole(fields["flatPercent"], 0, 100));
        if (said > stock)
        {
            values.Log.AddSaid(fields["least"]!, LengthText.Finer(said.Value, values.Tape), $"no more than the trim's length, {LengthText.Finer(stock.Value, values.Tape)}", LengthText.Down(stock.Value, values.Tape), [Engine.Mend.Of(fields["least"]!.Path, stock.Value, values.Tape)]);
            return (name, null);
        }

        if (kind is TrimKind.MitredEdge or TrimKind.EasedEdge) return (name, name is null ? null : new TrimProduct(name, kind.Value, Length.Zero, Length.Zero, Length.Zero, Length.Zero) { Thickness = thickness });
        Needs(fields, "length", Forms.ALength);
        Needs(fields, "width", "a length such as \"2\"");
        foreach (var (reach, field) in new[] { (outside, "outside"), (inside, "inside") })
        {
            // What reaches no further than the trim is wide leaves a hole in the corner.
            if (reach < width && fields[field] is { } entered) Said(values, entered, reach.Value, $"at least the trim's width, {LengthText.Finer(width.Value, values.Tape)}", Up(width.Value, values.Tape));
        }

        return (name, name is null || kind is not { } of || stock is not { } length || width is not { } wide ? null : new TrimProduct(name, of, length, wide, joint, least)
        {
            Thickness = thickness, Kerf = kerf, ByBar = bar, Outside = outside, Inside = inside, Stop = stop,
            Breakage = breakage, Spares = spares, FlatPercent = percent,
        });
    }

    /// <summary>What every trim has that is bought; a misspelt field is said once, not as missing too.</summary>
    private static void Needs(Fields fields, string name, string example)
    {
        var slip = ((Entry.Group)fields.Entry).Members.Keys.Any(key => !Forms.Trim.Names.Contains(key, StringComparer.Ordinal) && string.Equals(Near.Of(key, Forms.Trim.Names), name, StringComparison.Ordinal));
        if (fields[name] is null && !slip) fields.Missing(name, example);
    }

    /// <summary>What stands at an edge: a width, or a trim that is named, which has its own.</summary>
    public static (Length Width, TrimRequest? Trimmed) AtEdge(Fields edge, Edge basis)
    {
        if (edge["trim"] is not Entry.Group group) return edge["trim"] is null ? (basis.Trim, basis.Trimmed) : (edge.Length("trim", LengthRange.Strip, basis.Trim), null);
        var asked = Read(group, edge.Values);
        return (edge.Values.Trims.Width(asked) ?? Length.Zero, asked);
    }

    public static TrimRequest? Read(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.EdgeTrim, values) is not { } fields) return null;
        var of = KnownNames.Known(fields["of"], values, "a trim of this job", values.Trims.Trims.Select(trim => trim.Name));
        var stagger = fields.Length("stagger", LengthRange.Cut);
        var joints = fields.Word("joints", Words.TrimJoints, stagger is null ? TrimJoints.Free : TrimJoints.Staggered);
        var corner = values.Word(fields["corner"], Words.TrimCorners);
        var product = values.Trims.Named(of);
        var (left, right) = (Ending(fields["left"], corner, product, values), Ending(fields["right"], corner, product, values));
        if (stagger is not null && joints is TrimJoints.Free or TrimJoints.InLine or TrimJoints.Unbroken && fields["stagger"] is { } entered)
        {
            values.Log.AddSaid(entered, $"a stagger with joints \"{Words.TrimJoints.Say(joints)}\"", "it only with joints that are \"staggered\", \"repeating\" or \"centred\"", "leave it out");
            return null;
        }

        return of is null ? null : new TrimRequest(of, joints) { Stagger = stagger, Left = left, Right = right };
    }

    /// <summary>One end; what it does not say of a corner is as for both.</summary>
    private static TrimEnding Ending(Entry? entry, TrimCorner? both, TrimProduct? product, Values values)
    {
        if (entry is null || Fields.Open(entry, Forms.TrimEnding, values) is not { } fields) return new(both);
        var corner = values.Word(fields["corner"], Words.TrimCorners) ?? both;
        var turned = fields.Length("return", LengthRange.TrimLength);
        if (turned is not { } asked || product is null || fields["return"] is not { } entered) return new(corner, turned);
        var longest = values.Tape.Down(product.Stock);
        var shortest = Up(product.Thickness + Length.FromSteps(1), values.Tape);
        if (product.IsWorked || longest < shortest)
        {
            values.Log.AddSaid(entered, "a return", product.IsWorked ? "none of an edge that is worked on the tiles" : "none of a trim that is no longer than it is thick", "leave it out");
        }
        else if (asked > product.Stock)
        {
            Said(values, entered, asked, $"no more than the trim's length, {LengthText.Finer(product.Stock, values.Tape)}", longest);
        }
        else if (asked <= product.Thickness)
        {
            Said(values, entered, asked, $"more than the trim's thickness, {LengthText.Finer(product.Thickness, values.Tape)}, which its mitre takes", shortest);
        }

        return new(corner, turned);
    }

    /// <summary>The first mark from a length up: what is said as the nearest must do.</summary>
    private static Length Up(Length length, Tape tape) => tape.Down(length) is var down && down < length ? down + tape.Mark : down;

    private static void Said(Values values, Entry entry, Length found, string expected, Length nearest) =>
        values.Log.AddSaid(entry, LengthText.Finer(found, values.Tape), expected, LengthText.Nearest(nearest, values.Tape), [Engine.Mend.Of(entry.Path, nearest, values.Tape)]);
}
