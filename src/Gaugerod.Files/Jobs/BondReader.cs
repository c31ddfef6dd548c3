using Gaugerod.Engine;
using Gaugerod.Engine.Bonds;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads the bond a run asks for. Whether the tiles make it is not judged here.</summary>
internal sealed class BondReader(Values values, KnownNames names)
{
    private const int MostAbreast = 4;
    private const int MostChips = 64;
    private const int MostLengths = 8;

    /// <summary>The kinds of bonds, as the file calls them.</summary>
    public static IEnumerable<string> Kinds => BondForms.All.Select(form => form.Name);

    public BondRequest? Read(Entry? entry)
    {
        if (entry is Entry.Text { Value: var said })
        {
            var meant = Near.Of(said, Kinds) ?? "grid";
            values.Log.Add(entry, "a group { }", string.Equals(meant, "running", StringComparison.Ordinal) ? "{ \"kind\": \"running\", \"offset\": \"1/2\" }" : $"{{ \"kind\": \"{meant}\" }}");
            return null;
        }

        if (entry is null || Fields.Group(entry, values) is not { } group) return null;
        var kind = group.Members.TryGetValue("kind", out var member) ? member.Value : null;
        var word = (kind as Entry.Text)?.Value;
        if (BondForms.All.FirstOrDefault(form => string.Equals(form.Name, word, StringComparison.Ordinal)) is not { } known)
        {
            if (kind is null) values.Log.Add(group.At, group.PathTo("kind"), "nothing", Values.OneOf(Kinds));
            else values.Log.Add(kind, Values.OneOf(Kinds), Values.Quoted(Near.Of(word ?? "", Kinds)));
            return null;
        }

        if (Fields.Open(group, known, values) is not { } fields) return null;
        var bond = Of(known, fields);
        if (fields["turned"] is not Entry.Group) return bond is null ? null : bond with { Turn = values.Degrees(fields["turned"], -360, 360) ?? Angle.Zero };
        return Turns(fields["turned"]) is { } turns && bond is not null ? bond with { Turn = turns.From, Free = turns } : null;
    }

    private TurnRange? Turns(Entry? entry)
    {
        if (Fields.Open(entry, BondForms.Turns, values) is not { } fields) return null;
        var (from, to, step) = (values.Degrees(fields["from"], -360, 360), values.Degrees(fields["to"], -360, 360), values.Degrees(fields["step"], 0, 360));
        if (from is not { } first || to is not { } last || step is not { } by) return null;
        if (last.Thousandths >= first.Thousandths && by.Thousandths > 0 && new TurnRange(first, last, by) is { Count: <= TurnRange.Most } turns) return turns;
        var (lesser, greater) = (Math.Min(first.Thousandths, last.Thousandths), Math.Max(first.Thousandths, last.Thousandths));
        var turned = new TurnRange(Angle.FromThousandths(lesser), Angle.FromThousandths(greater), by);
        var apart = by.Thousandths > 0 && turned.Count <= TurnRange.Most ? by : Angle.FromDegrees(((greater - lesser) / ((TurnRange.Most - 1) * 1000)) + 1);
        var nearest = $"{{ \"from\": {Values.Number(turned.From)}, \"to\": {Values.Number(turned.To)}, \"step\": {Values.Number(apart)} }}";
        values.Log.AddSaid(
            entry!, $"turns from {first} to {last} by {by}", $"turns from the lesser to the greater, at most {Values.Number(TurnRange.Most)} of them",
            nearest, [new Mend(entry!.Path, nearest)]);
        return null;
    }

    private BondRequest? Of(Form form, Fields fields)
    {
        if (form == BondForms.Grid) return new BondRequest.Grid(fields.Word("lay", Words.Lays, Lay.Level));
        if (form == BondForms.Running) return Running(fields);
        if (form == BondForms.Herringbone) return new BondRequest.Herringbone(values.Whole(fields["abreast"], 1, MostAbreast) ?? 1);
        if (form == BondForms.Basketweave) return new BondRequest.Basketweave();
        if (form == BondForms.Pinwheel) return With(new BondRequest.Pinwheel(), fields["small"]);
        if (form == BondForms.Windmill) return With(new BondRequest.Windmill(), fields["square"]);
        if (form == BondForms.Hexagon) return new BondRequest.Hexagon(fields.Word("up", Words.HexagonEnds, true), values.Length(fields["point"], LengthRange.Cut));
        if (form == BondForms.Octagon) return With(new BondRequest.Octagon(values.Length(fields["corner"], LengthRange.Cut)), fields["square"]);
        if (form == BondForms.Chevron) return Chevron(fields);
        if (form == BondForms.Modular) return With(new BondRequest.Modular(), fields, 3, 3);
        return form == BondForms.Planks ? Planks(fields) : Mosaic(fields);
    }

    private BondRequest? Running(Fields fields)
    {
        const string Plain = "{ \"kind\": \"grid\" }";
        var (lay, step) = (fields.Word("lay", Words.Lays, Lay.Level), fields.Word("step", Words.Steps, Stepping.OneWay));
        return values.Part(fields["offset"], $"{Plain} for joints one above the other", new Mend(fields.Entry.Path, Plain)) is { } part
            ? new BondRequest.Running(lay, part.Numerator, part.Denominator, step)
            : null;
    }

    private BondRequest? Chevron(Fields fields)
    {
        if (values.Degrees(fields["slope"], -360, 360) is not { } slope) return null;
        var chevron = new BondRequest.Chevron(slope);
        return fields["down"] is { } down ? With(chevron, down) : chevron;
    }

    private BondRequest? Planks(Fields fields)
    {
        var (stagger, start) = (values.Length(fields["stagger"], LengthRange.Stagger), values.Name(fields["start"]));
        return stagger is { } least && start is not null ? With(new BondRequest.Planks(least, start), fields, 0, MostLengths) : null;
    }

    private BondRequest.Mosaic? Mosaic(Fields fields) =>
        values.Whole(fields["across"], 1, MostChips) is { } across && values.Whole(fields["high"], 1, MostChips) is { } high ? new(across, high) : null;

    private BondRequest? With(BondRequest bond, Entry? product) =>
        names.Product(product, values) is { } name ? bond with { With = [name] } : null;

    private BondRequest? With(BondRequest bond, Fields fields, int least, int most)
    {
        var with = fields.Items("with").Select(item => names.Product(item, values)).ToList();
        if (with.Count < least || with.Count > most)
        {
            if (fields["with"] is { } entry) values.Log.AddSaid(entry, with.Count == 1 ? "one product's name" : $"{Values.Number(with.Count)} products' names", least == most ? $"{Values.Number(least)} products' names" : $"at most {Values.Number(most)} products' names");
            return null;
        }

        return with.Contains(null) ? null : bond with { With = with.OfType<string>().ToSequence() };
    }
}
