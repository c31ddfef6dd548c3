using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what a run is set, grouted and sealed with.</summary>
internal static class SettingReader
{
    /// <summary>What it is set with; null for none, and whether what stands there could be read.</summary>
    public static (SettingRequest? Setting, bool Understood) Read(Entry? entry, Values values)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, SupplyForms.Setting, values) is not { } fields) return (null, false);
        var known = values.Supplies;
        var (mortar, grout, sealant) = (known.Named(fields["mortar"], values, SupplyKind.Mortar), known.Named(fields["grout"], values, SupplyKind.Grout), known.Named(fields["sealant"], values, SupplyKind.Sealant));
        var (backer, wedges) = (known.Named(fields["backer"], values, SupplyKind.Backer), known.Named(fields["wedges"], values, SupplyKind.Wedges));
        var (spacers, clips) = (Between(fields["spacers"], values, SupplyKind.Spacers), Between(fields["clips"], values, SupplyKind.Clips));
        var sealer = known.Coated(fields["sealer"], values, SupplyKind.Sealer);
        var (trowel, batten) = (Trowel(fields["trowel"], values), Batten(fields["batten"], values));
        var setting = new SettingRequest
        {
            Mortar = mortar, Trowel = trowel, BackButter = fields.Length("backButter", LengthRange.Layer, Length.Zero), Grout = grout, JointDepth = fields.Length("jointDepth", LengthRange.Depth),
            Sealant = sealant, SealantDepth = fields.Length("sealantDepth", LengthRange.Depth), Backer = backer, Spacers = spacers, Clips = clips, Wedges = wedges, Sealer = sealer, Batten = batten,
        };
        Beside("trowel", "mortar");
        Beside("backButter", "mortar");
        Beside("jointDepth", "grout");
        Beside("sealantDepth", "sealant");
        Beside("backer", "sealant");
        Beside("wedges", "clips");
        (string Field, object? Read)[] groups = [("mortar", mortar), ("grout", grout), ("trowel", trowel), ("sealant", sealant), ("backer", backer), ("wedges", wedges), ("spacers", spacers), ("clips", clips), ("sealer", sealer), ("batten", batten)];
        return (setting, groups.All(group => (group.Read is null) == (fields[group.Field] is null)));

        // What is said of nothing would be passed over.
        void Beside(string field, string of)
        {
            if (fields[field] is { } said && fields[of] is null) values.Log.AddSaid(said, $"a \"{field}\" and no \"{of}\"", $"the \"{of}\" beside it", $"\"{of}\": \"..\"");
        }
    }

    private static Between? Between(Entry? entry, Values values, SupplyKind kind)
    {
        if (Fields.Open(entry, SupplyForms.Between, values) is not { } fields) return null;
        var every = fields.Length("every", LengthRange.Every);
        return values.Supplies.Named(fields["of"], values, kind) is { } of && (every is null) == (fields["every"] is null) ? new(of, every) : null;
    }

    private static BattenRequest? Batten(Entry? entry, Values values)
    {
        if (Fields.Open(entry, SupplyForms.Batten, values) is not { } fields) return null;
        var (of, screws, every) = (values.Supplies.Named(fields["of"], values, SupplyKind.Batten), values.Supplies.Named(fields["screws"], values, SupplyKind.Screws), fields.Length("every", LengthRange.Every));
        if (fields["screws"] is { } held && fields["every"] is null) values.Log.AddSaid(held, "\"screws\" and no \"every\"", "how far they stand apart at the most: it is not published, so you say it", values.Example("\"every\": \"18\""));
        if (fields["every"] is { } apart && fields["screws"] is null) values.Log.AddSaid(apart, "an \"every\" and no \"screws\"", "the \"screws\" beside it", "\"screws\": \"..\"");
        return of is null || (screws is null) != (fields["screws"] is null) || (every is null) != (fields["every"] is null) || (screws is null) != (every is null) ? null : new(of) { Screws = screws, Every = every ?? Length.Zero };
    }

    private static Trowel? Trowel(Entry? entry, Values values)
    {
        if (Fields.Open(entry, SupplyForms.Trowel, values) is not { } fields) return null;
        var (width, depth) = (fields.Length("width", LengthRange.Notch), fields.Length("depth", LengthRange.Notch));
        var (shape, degrees) = (fields.Word("shape", Words.NotchShapes, NotchShape.Square), values.Whole(fields["angle"], 30, 90) ?? 45);
        var tooth = fields.Length("tooth", shape == NotchShape.Vee ? LengthRange.Tooth : LengthRange.Notch);
        if (width is not { } wide || depth is not { } deep || tooth is not { } apart) return null;
        if (shape == NotchShape.Round && deep.Steps * 2 < wide.Steps)
        {
            values.Log.AddSaid(fields["depth"]!, $"{LengthText.Finer(deep, values.Tape)} deep, with a half round {LengthText.Finer(wide, values.Tape)} wide", "at least half as deep as it is wide", LengthText.Finer(Length.FromSteps((wide.Steps + 1) / 2), values.Tape));
            return null;
        }

        return new(wide, deep, apart) { Shape = shape, Degrees = degrees };
    }
}
