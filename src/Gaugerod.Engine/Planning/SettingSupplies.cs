using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>What a run takes of mortar, of grout and of what stands in its joints meanwhile, by the pieces of the plan.</summary>
internal static class SettingSupplies
{
    private const double Step = 3200;

    /// <summary>What one run takes: each supply's name with its use.</summary>
    public static IEnumerable<(string Of, SupplyUse Use)> Of(Job job, RunPlan run)
    {
        if (run.Request.Setting is not { } setting) yield break;
        var product = JobRuns.ProductOf(job, run.Request);
        var fields = Fields(run);
        if (setting.Mortar is { } mortar && Mortar(job.Tape, run, fields, product, setting) is { } bed) yield return (mortar, bed);
        if (setting.Grout is { } grout && Grout(job.Tape, run, fields, product, setting) is { } joints) yield return (grout, joints);
        if (setting.Spacers is { } spacers) yield return (spacers.Of, new(run.Request.Name, fields.Sum(field => InJoints(field, spacers, run)), Said(spacers, job.Tape)));
        if (setting.Clips is { } clips) yield return (clips.Of, new(run.Request.Name, fields.Sum(field => InJoints(field, clips, run)), Said(clips, job.Tape)));
        if (setting is { Wedges: { } wedges, Clips: { } between }) yield return (wedges, new(run.Request.Name, fields.Max(field => InJoints(field, between, run)), "one for each clip of the face with the most of them; they are used again"));
        if (setting.Sealer is { } sealer)
        {
            var area = fields.Sum(field => Area(field.Field.DoubledArea)) * sealer.Coats;
            yield return (sealer.Of, new(run.Request.Name, area / 1e6, $"{Amounts.Area(area, job.Tape)} of field{CoatsWords.Of(sealer.Coats)}"));
        }
    }

    /// <summary>What is set out as one, with its pieces: the planes of a folded face together, for joints lie along its folds too.</summary>
    private static List<SetOutField> Fields(RunPlan run) =>
        [.. run.Faces.GroupBy(face => face.Face.SetOut, ReferenceEqualityComparer.Instance).Select(faces => new SetOutField(faces.First().Face.SetOut.Field, [.. faces.SelectMany(face => face.Pieces)]))];

    private static int InJoints(SetOutField field, Between between, RunPlan run) => between.Every is { } every
        ? Meetings.Along(Meetings.Of(field.Pieces, run.Best.Placing.Joint), every)
        : Meetings.Crossings(field.Field, field.Pieces, run.Best.Placing.Joint);

    private static string Said(Between between, Tape tape) => between.Every is { } every ? $"in every joint between two tiles, {LengthText.Nearest(every, tape)} apart at the most" : "one at every crossing of joints";

    /// <summary>How thick the mortar lies under the tile, in mm: by the trowel, else as the product says.</summary>
    public static double Bed(Product product, SettingRequest setting) => setting.Trowel?.Bed ?? Mm(product.BondCoat);

    /// <summary>How deep joints are filled.</summary>
    public static Length Depth(Product product, SettingRequest setting) => setting.JointDepth ?? product.Thickness;

    private static SupplyUse? Mortar(Tape tape, RunPlan run, List<SetOutField> fields, Product product, SettingRequest setting)
    {
        // The whole field is combed; only tiles are buttered.
        var (field, tiles, bed) = (fields.Sum(of => Area(of.Field.DoubledArea)), fields.Sum(of => of.Pieces.Sum(Area)), Bed(product, setting));
        if (bed == 0 && setting.BackButter == Length.Zero) return null;
        var how = $"{Amounts.Area(field, tape)} of field, {Amounts.Film(bed, tape)} thick{(setting.Trowel is { } trowel ? $" ({Said(trowel, tape)})" : ", the bond coat of the tile")}";
        if (setting.BackButter > Length.Zero) how += $", and {Amounts.Area(tiles, tape)} of backs, {Amounts.Film(Mm(setting.BackButter), tape)}";
        return new(run.Request.Name, ((field * bed) + (tiles * Mm(setting.BackButter))) / 1e6, how);
    }

    private static SupplyUse? Grout(Tape tape, RunPlan run, List<SetOutField> fields, Product product, SettingRequest setting)
    {
        var depth = Depth(product, setting);
        if (depth == Length.Zero) return null;
        var joints = fields.ConvertAll(of => JointSpace.Of(of.Field, of.Pieces));
        var area = joints.Sum(of => of.Area) + InSheets(run, product);
        var what = run.Request.Bond is BondRequest.Mosaic ? "joints, those within cut sheets by their share" : $"{Amounts.Distance(joints.Sum(of => of.Length), tape)} of joints";
        var how = $"{what}, {Amounts.Area(area, tape)}, {LengthText.Nearest(depth, tape)} deep{(setting.JointDepth is null ? ", as the tile is thick" : "")}";
        return new(run.Request.Name, area * Mm(depth) / 1e6, how);
    }

    // Between the chips of a sheet lie joints too; of a cut sheet, its share of them.
    private static double InSheets(RunPlan run, Product product)
    {
        if (run.Request.Bond is not BondRequest.Mosaic(var across, var up)) return 0;
        var (wide, high, joint) = (Mm(product.Width), Mm(product.Height), Mm(run.Best.Placing.Joint));
        var chips = (wide - ((across - 1) * joint)) * (high - ((up - 1) * joint));
        return run.Faces.Sum(face => face.Pieces.Sum(Area)) * (1 - (chips / (wide * high)));
    }

    private static string Said(Trowel trowel, Tape tape) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(trowel.Shape switch { NotchShape.Round => "round", NotchShape.Vee => "pointed", _ => "square" })} notches {LengthText.Nearest(trowel.Width, tape)} wide, {LengthText.Nearest(trowel.Depth, tape)} deep, {LengthText.Nearest(trowel.Tooth, tape)} apart, held at {trowel.Degrees}°");

    private static double Area(Piece piece)
    {
        var doubled = piece.Outline.DoubledArea;
        foreach (var hole in piece.Inner) doubled -= hole.DoubledArea;
        return Area(doubled);
    }

    private static double Area(Int128 doubled) => (double)doubled / 2 / (Step * Step);

    public static double Mm(Length length) => length.Steps / Step;

    private sealed record SetOutField(Polygon Field, IReadOnlyList<Piece> Pieces);
}
