using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What a job's runs take of mortar and grout, by the pieces and the joints of the plan.</summary>
internal static class SettingSupplies
{
    private const double Step = 3200;

    /// <summary>A line for every supply that a run names, in the job's order.</summary>
    public static Sequence<SupplyLine> Of(Job job, IReadOnlyList<RunPlan> runs)
    {
        var uses = job.Supplies.ToDictionary(supply => supply.Name, _ => new List<SupplyUse>(), StringComparer.Ordinal);
        foreach (var run in runs)
        {
            if (run.Request.Setting is not { } setting) continue;
            var product = JobRuns.ProductOf(job, run.Request);
            if (setting.Mortar is { } mortar && Mortar(job.Tape, run, product, setting) is { } bed) uses[mortar].Add(bed);
            if (setting.Grout is { } grout && Grout(job.Tape, run, product, setting) is { } joints) uses[grout].Add(joints);
        }

        return job.Supplies.Where(supply => uses[supply.Name].Count > 0).Select(supply => new SupplyLine(supply, uses[supply.Name].ToSequence())).ToSequence();
    }

    /// <summary>How thick the mortar lies under the tile, in mm: by the trowel, else as the product says.</summary>
    public static double Bed(Product product, SettingRequest setting) => setting.Trowel?.Bed ?? Mm(product.BondCoat);

    /// <summary>How deep joints are filled.</summary>
    public static Length Depth(Product product, SettingRequest setting) => setting.JointDepth ?? product.Thickness;

    private static SupplyUse? Mortar(Tape tape, RunPlan run, Product product, SettingRequest setting)
    {
        // The whole field is combed; only tiles are buttered.
        var (field, tiles, bed) = (run.Faces.Sum(face => Area(face.Face.Field.DoubledArea)), run.Faces.Sum(face => face.Pieces.Sum(Area)), Bed(product, setting));
        if (bed == 0 && setting.BackButter == Length.Zero) return null;
        var how = $"{Amounts.Area(field, tape)} of field, {Amounts.Film(bed, tape)} thick{(setting.Trowel is { } trowel ? $" ({Said(trowel, tape)})" : ", the bond coat of the tile")}";
        if (setting.BackButter > Length.Zero) how += $", and {Amounts.Area(tiles, tape)} of backs, {Amounts.Film(Mm(setting.BackButter), tape)}";
        return new(run.Request.Name, ((field * bed) + (tiles * Mm(setting.BackButter))) / 1e6, how);
    }

    private static SupplyUse? Grout(Tape tape, RunPlan run, Product product, SettingRequest setting)
    {
        var depth = Depth(product, setting);
        if (depth == Length.Zero) return null;
        var joints = run.Faces.Select(face => JointSpace.Of(face.Face.Field, face.Pieces)).ToList();
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
}
