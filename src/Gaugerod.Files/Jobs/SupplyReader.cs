using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what is bought by the pack, and what a run is set and grouted with.</summary>
internal static class SupplyReader
{
    public static (string? Name, Supply? Supply) Read(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, Forms.Supply, values) is not { } fields) return (null, null);
        var name = names.Take(fields["name"], values);
        var (kind, pack) = (values.Word(fields["kind"], Words.SupplyKinds), values.Name(fields["pack"]));
        var makes = kind is { } made ? AmountText.Makes(fields["yield"], values, Supply.MeasureOf(made)) : null;
        var loss = values.Whole(fields["loss"], 0, 100) ?? 0;
        return (name, name is null || kind is not { } of || makes is not { } amount || (fields["pack"] is not null && pack is null) ? null : new(name, of, pack ?? "pack", amount) { LossPercent = loss });
    }

    /// <summary>What a run is set and grouted with; null for none, and whether what stands there could be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="values">Takes what is wrong.</param>
    /// <param name="supplies">The job's supplies: their names, and those that could be read.</param>
    public static (SettingRequest? Setting, bool Understood) Setting(Entry? entry, Values values, IReadOnlyList<(string? Name, Supply? Supply)> supplies)
    {
        if (entry is null) return (null, true);
        if (Fields.Open(entry, Forms.Setting, values) is not { } fields) return (null, false);
        var (mortar, grout) = (Named("mortar", SupplyKind.Mortar, "a mortar of this job"), Named("grout", SupplyKind.Grout, "a grout of this job"));
        var trowel = Trowel(fields["trowel"], values);
        var butter = fields.Length("backButter", LengthRange.Layer, Length.Zero);
        var depth = fields.Length("jointDepth", LengthRange.Depth);
        Beside("trowel", "mortar");
        Beside("backButter", "mortar");
        Beside("jointDepth", "grout");
        var understood = (mortar is null) == (fields["mortar"] is null) && (grout is null) == (fields["grout"] is null) && (trowel is null) == (fields["trowel"] is null);
        return (new() { Mortar = mortar, Trowel = trowel, BackButter = butter, Grout = grout, JointDepth = depth }, understood);

        // What is said of nothing would be passed over.
        void Beside(string field, string of)
        {
            if (fields[field] is { } said && fields[of] is null) values.Log.AddSaid(said, $"a \"{field}\" and no \"{of}\"", $"the \"{of}\" beside it", $"\"{of}\": \"..\"");
        }

        // What could not be read itself may be what is meant.
        string? Named(string field, SupplyKind kind, string what) =>
            KnownNames.Known(fields[field], values, what, supplies.Where(one => one.Supply is null || one.Supply.Kind == kind).Select(one => one.Name));
    }

    private static Trowel? Trowel(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.Trowel, values) is not { } fields) return null;
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
