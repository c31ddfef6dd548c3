using Gaugerod.Engine;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a run: faces tiled as one.</summary>
internal sealed class RunReader(Values values, KnownNames names)
{
    private readonly HashSet<string> _tiled = new(StringComparer.Ordinal);

    public RunRequest? Read(Entry entry, Uniques runNames)
    {
        if (Fields.Open(entry, Forms.Run, values) is not { } fields) return null;
        var name = runNames.Take(fields["name"], values);
        var product = names.Product(fields["product"], values);
        var faces = Faces(fields);
        var bond = new BondReader(values, names).Read(fields["bond"]);
        var corners = fields.Word("corners", Words.CornerWays, Corners.Wrap);
        var joint = Joint(fields["joint"]);
        var through = fields["through"] is { } t ? KnownNames.FaceOf(faces, t, values) : null;
        var limits = Limits(fields["limits"]);
        var wantReader = new WantReader(values, names, faces);
        var wants = fields.Items("wants").Select(wantReader.Read).ToList();
        var order = Order(fields);
        var place = new PlaceReader(values, faces.Count, corners).Read(fields["place"], joint);
        var setReader = new SetReader(values, faces);
        var set = fields.Items("set").Select(setReader.Read).ToList();
        var movement = Movement(fields["movement"]);
        var (setting, understood) = SettingReader.Read(fields["setting"], values);
        if (!understood || name is null || product is null || faces.Contains(null) || bond is null || joint is null || wants.Contains(null) || set.Contains(null)) return null;
        return new(name, product, faces.OfType<string>().ToSequence(), bond, corners, joint, through, limits, wants.OfType<Want>().ToSequence(), order) { Place = place, Set = set.OfType<SetSoFar>().ToSequence(), Setting = setting, Movement = movement };
    }

    private List<string?> Faces(Fields fields)
    {
        var faces = new List<string?>();
        foreach (var item in fields.Items("faces", atLeast: 1))
        {
            var face = names.Face(item, values);
            if (face is not null && faces.Contains(face)) values.Log.AddSaid(item, $"\"{face}\" a second time", "every face once in a run");
            else if (face is not null && !_tiled.Add(face)) values.Log.AddSaid(item, $"\"{face}\", which another run tiles", "every face in one run", "two faces, where one wall gets two tilings");
            faces.Add(face);
        }

        // What refers to the faces is not blamed for a list that could not be read.
        if (faces.Count == 0) faces.Add(null);
        return faces;
    }

    private JointRange? Joint(Entry? entry)
    {
        if (entry is not Entry.Group) return values.Length(entry, LengthRange.Joint) is { } only ? JointRange.Only(only) : null;
        if (Fields.Open(entry, Forms.JointRange, values) is not { } fields) return null;
        var wanted = fields.Length("wanted", LengthRange.Joint);
        var (least, most) = (fields.Length("least", LengthRange.Joint) ?? wanted, fields.Length("most", LengthRange.Joint) ?? wanted);
        if (wanted is not { } w || least is not { } l || most is not { } m) return null;
        if (l <= w && w <= m) return new(l, w, m);
        Length[] sorted = [.. new[] { l, w, m }.Order()];
        var nearest = string.Join(", ", sorted.Zip(["least", "wanted", "most"], (length, name) => $"\"{name}\": {Mend.Of("", length, values.Tape).Value}"));
        values.Log.AddSaid(entry, w < l ? "a wanted joint under the least" : w > m ? "a wanted joint over the most" : "a joint with its least over its most", "least, wanted and most, each no smaller than the one before", $"{{ {nearest} }}", [new(entry.Path, $"{{ {nearest} }}")]);
        return null;
    }

    private MovementRequest? Movement(Entry? entry) => Fields.Open(entry, Forms.Movement, values) is { } fields
        ? new(fields.Word("exposure", Words.Exposures, Exposure.Inside), fields.Length("most", LengthRange.Apart)) : null;

    private Limits Limits(Entry? entry)
    {
        var sliver = values.Unit == LengthUnit.Inch ? Length.FromInches(2) : Length.FromMillimetres(50);
        if (Fields.Open(entry, Forms.Limits, values) is not { } fields) return new(null, sliver, true);
        return new(fields.Length("smallest", LengthRange.Cut), fields.Length("sliver", LengthRange.Cut, sliver), values.Truth(fields["halfTile"]) ?? true) { AtWorst = fields.Word("cuts", Words.CutsCompared, false) };
    }

    private Sequence<Criterion> Order(Fields fields)
    {
        var all = Enum.GetValues<Criterion>();
        if (fields["order"] is not { } entry) return all.ToSequence();
        var order = new List<Criterion>();
        foreach (var item in fields.Items("order"))
        {
            if (values.Word(item, Words.Criteria) is not { } criterion) return all.ToSequence();
            if (order.Contains(criterion)) values.Log.AddSaid(item, $"\"{Words.Criteria.Say(criterion)}\" a second time", "each word of the order once");
            order.Add(criterion);
        }

        var left = all.Except(order).Select(Words.Criteria.Say).ToList();
        if (entry is Entry.List && left.Count > 0) values.Log.AddSaid(entry, "an order without " + Values.OneOf(left), "all seven words, the most important first", $"add {Values.OneOf(left)} at the end");
        return order.ToSequence();
    }
}
