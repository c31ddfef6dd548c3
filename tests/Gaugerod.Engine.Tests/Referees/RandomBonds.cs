using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Referees.RandomRooms;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// Every bond that can be asked for, with random tiles that make it without slack. Sizes fall on whole millimetres, on
/// sixteenths or anywhere; joints are metric, in inches, or none.
/// </summary>
internal static class RandomBonds
{
    private static readonly Gen<Length> Joints = Gen.Frequency(
        (5, Gen.Long[1, 5].Select(Mm)), (3, Gen.Long[2, 6].Select(parts => In(0, parts, 32))), (1, Gen.Const(Length.Zero)), (1, Gen.Long[1, 20_000].Select(Length.FromSteps)));

    /// <summary>One of them all, each kind as often as another.</summary>
    public static Gen<BondCase> Any(int scale = 1) => Gen.Int[0, Kinds.Length - 1].SelectMany(i => Joints.SelectMany(joint => Kinds[i](joint, scale)));

    /// <summary>How a case of each kind is drawn, given the joint and how many times larger than usual its tiles are.</summary>
    private static readonly Func<Length, int, Gen<BondCase>>[] Kinds =
    [
        (j, n) => from w in Size(40 * n, 300 * n) from h in Size(40 * n, 300 * n) select new BondCase("grid", new BondRequest.Grid(Lay.Level), [Of(w, h)], j),
        (j, n) =>
            from w in Size(80 * n, 300 * n)
            from h in Size(40 * n, 150 * n)
            from part in Pick((1, 2), (1, 3), (2, 5), (3, 7))
            from step in Pick(Stepping.OneWay, Stepping.BackAndForth)
            select new BondCase("running", new BondRequest.Running(Lay.Level, part.Item1, part.Item2, step), [Of(w, h)], j),
        (j, n) =>
            from abreast in Gen.Int[1, 4]
            from h in Size(30 * n, 90 * n)
            from more in Size(5 * n, 200 * n)
            select new BondCase($"herringbone {abreast}", new BondRequest.Herringbone(abreast), [Of(((h + j) * abreast) - j + more, h)], j),
        (j, n) =>
            from count in Gen.Int[2, 4]
            from h in Size(30 * n, 90 * n)
            select new BondCase($"basketweave {count}", new BondRequest.Basketweave(), [Of((h * count) + (j * (count - 1)), h)], j),
        (j, n) => from s in Size(30 * n, 100 * n) from more in Size(10 * n, 200 * n) select new BondCase("pinwheel", new BondRequest.Pinwheel(), [Of(s + more, s + more), Of(s, s)], j),
        (j, n) => from w in Size(40 * n, 120 * n) from s in Size(20 * n, 150 * n) select new BondCase("windmill", new BondRequest.Windmill(), [Of(w + j + s, w), Of(s, s)], j),
        (j, n) =>
            from w in Size(50 * n, 250 * n)
            from pointed in Gen.Bool
            select new BondCase($"hexagon, {(pointed ? "points" : "flats")} up", new BondRequest.Hexagon(pointed, null), [Of(w, Grid.Nearest(w.Steps * 2 / Math.Sqrt(3)))], j),
        (j, n) =>
            from w in Size(50 * n, 200 * n)
            from h in Size(80 * n, 300 * n)
            from part in Gen.Int[5, 45]
            from pointed in Gen.Bool
            select new BondCase($"long hexagon, {(pointed ? "points" : "flats")} up", new BondRequest.Hexagon(pointed, Length.FromSteps(h.Steps * part / 100)), [Of(w, h)], j),
        (j, n) =>
            from s in Size(100 * n, 300 * n)
            from part in Gen.Int[15, 60]
            select new BondCase("octagon", new BondRequest.Octagon(null), [Of(s, s), Of(Length.FromSteps(s.Steps * part / 100), Length.FromSteps(s.Steps * part / 100))], j),
        (j, n) =>
            from w in Size(150 * n, 500 * n)
            from h in Size(40 * n, 120 * n)
            from slope in Gen.Frequency((2, Pick(15_000, 30_000, 45_000, 60_000)), (1, Gen.Int[8_000, 78_000]))
            from two in Gen.Bool
            select new BondCase("chevron", new BondRequest.Chevron(Angle.FromThousandths(slope)), two ? [Of(w, h), Of(w, h)] : [Of(w, h)], j),
        (j, n) => from u in Size(30 * n, 100 * n) select new BondCase("modular", new BondRequest.Modular(), [Units(u, j, 3, 2), Units(u, j, 2, 2), Units(u, j, 2, 1), Units(u, j, 1, 1)], j),
        (j, n) =>
            from widths in Size(150 * n, 600 * n).Array[1, 4]
            from h in Size(40 * n, 120 * n)
            from start in Pick("oak", "ash", "elm", "larch", "", "Straße")
            select new BondCase($"planks {widths.Length}", new BondRequest.Planks(Length.FromSteps(widths.Min(w => w.Steps) / 12), start), widths.Select(w => Of(w, h)).ToSequence(), j),
        (j, n) =>
            from across in Gen.Int[2, 6]
            from up in Gen.Int[2, 6]
            from w in Size(150 * n, 320 * n)
            from h in Size(150 * n, 320 * n)
            select new BondCase("mosaic", new BondRequest.Mosaic(across, up), [Of(w, h)], j),
    ];

    private static Gen<Length> Size(int least, int most) => Gen.OneOf(
        Gen.Long[least, most].Select(Mm), Gen.Long[least * 16 / 25, most * 16 / 25].Select(parts => In(0, Math.Max(parts, 1), 16)), Gen.Long[least * 3200L, most * 3200L].Select(Length.FromSteps));

    private static Product Of(Length width, Length height) => BondCase.Tile(width, height);

    private static Product Units(Length unit, Length joint, int width, int height) => Of(((unit + joint) * width) - joint, ((unit + joint) * height) - joint);
}
