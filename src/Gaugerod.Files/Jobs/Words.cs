using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Surveys;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>The words a field may hold, and what each stands for.</summary>
internal sealed class Words<T>(params (string Word, T Value)[] words)
    where T : struct
{
    public IEnumerable<string> All => words.Select(w => w.Word);

    /// <summary>Words that are none of these, but are said for one of them.</summary>
    public IReadOnlyDictionary<string, string> SaidFor { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>The word that a strange one was probably meant to be; null for none.</summary>
    public string? Nearest(string text) => Near.Of(text, All) ?? (Near.Of(text, SaidFor.Keys) is { } other ? SaidFor[other] : null);

    public T? Read(string word)
    {
        foreach (var (known, value) in words)
        {
            if (string.Equals(known, word, StringComparison.Ordinal)) return value;
        }

        return null;
    }

    public string Say(T value) => words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;
}

/// <summary>The words of the job file; the plan file uses the same.</summary>
internal static class Words
{
    public static readonly Words<LengthUnit> Units = new(("in", LengthUnit.Inch), ("mm", LengthUnit.Millimetre));
    public static readonly Words<bool> CutsCompared = new(("as planned", false), ("at worst", true));
    public static readonly Words<Paper> Papers = new(("letter", Paper.Letter), ("a4", Paper.A4));
    public static readonly Words<Region> Regions = new(("US", Region.America), ("UK", Region.Britain), ("EU", Region.Europe), ("AU", Region.Australia))
    {
        SaidFor = new Dictionary<string, string>(StringComparer.Ordinal) { ["USA"] = "US", ["CA"] = "US", ["Canada"] = "US", ["GB"] = "UK", ["DE"] = "EU", ["Europe"] = "EU", ["NZ"] = "AU", ["Australia"] = "AU" },
    };

    public static readonly Words<Turning> Turns = new(("free", Turning.Free), ("half", Turning.Half), ("none", Turning.None));
    public static readonly Words<Grain> Grains = new(("along width", Grain.AlongWidth), ("along height", Grain.AlongHeight));
    public static readonly Words<bool> Cutters = new(("snap", true), ("wet saw", false));
    public static readonly Words<TileClass> Classes = new(("natural", TileClass.Natural), ("calibrated", TileClass.Calibrated), ("rectified", TileClass.Rectified));

    public static readonly Words<EdgeKind> EdgeKinds = new(
        ("inside corner", EdgeKind.InsideCorner), ("outside corner", EdgeKind.OutsideCorner), ("free", EdgeKind.Free), ("floor", EdgeKind.Floor),
        ("ceiling", EdgeKind.Ceiling), ("fixture", EdgeKind.Fixture), ("threshold", EdgeKind.Threshold))
    {
        SaidFor = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["wall"] = "inside corner", ["corner"] = "inside corner", ["open"] = "free", ["none"] = "free", ["edge"] = "free", ["tub"] = "fixture", ["bath"] = "fixture",
            ["cabinet"] = "fixture", ["counter"] = "fixture", ["window"] = "fixture", ["door"] = "threshold", ["doorway"] = "threshold", ["carpet"] = "threshold",
        },
    };

    public static readonly Words<Lap> Laps = new(("through", Lap.Through), ("laps", Lap.Laps));

    public static readonly Words<TrimKind> TrimKinds = new(
        ("bullnose", TrimKind.Bullnose), ("quarter round", TrimKind.QuarterRound), ("cove", TrimKind.Cove), ("profile", TrimKind.Profile), ("liner", TrimKind.Liner),
        ("mitred edge", TrimKind.MitredEdge), ("eased edge", TrimKind.EasedEdge));

    public static readonly Words<Exposure> Exposures = new(("inside", Exposure.Inside), ("sun", Exposure.Sun), ("outside", Exposure.Outside));

    public static readonly Words<NichePart> NicheParts = new(("back", NichePart.Back), ("bottom", NichePart.Bottom), ("top", NichePart.Top), ("left", NichePart.Left), ("right", NichePart.Right));

    public static readonly Words<SupplyKind> SupplyKinds = new(
        ("mortar", SupplyKind.Mortar), ("grout", SupplyKind.Grout), ("sealant", SupplyKind.Sealant), ("backer", SupplyKind.Backer), ("membrane", SupplyKind.Membrane), ("band", SupplyKind.Band),
        ("primer", SupplyKind.Primer), ("sealer", SupplyKind.Sealer), ("filler", SupplyKind.Filler), ("spacers", SupplyKind.Spacers), ("clips", SupplyKind.Clips), ("wedges", SupplyKind.Wedges),
        ("screws", SupplyKind.Screws), ("tape", SupplyKind.Tape), ("batten", SupplyKind.Batten), ("masonry", SupplyKind.Masonry));

    public static readonly Words<NotchShape> NotchShapes = new(("square", NotchShape.Square), ("round", NotchShape.Round), ("pointed", NotchShape.Vee));

    public static readonly Words<PriceUnit> PriceUnits = new([.. Engine.Prices.PriceUnits.All.Select(word => (word, Engine.Prices.PriceUnits.Read(word)!.Value))]);
    public static readonly Words<LabourOf> LabourKinds = new([.. PriceWords.All.Select(one => (one.Word, one.Kind))]);
    public static readonly Words<CostGroup> CostGroups = new([.. Enum.GetValues<CostGroup>().Select(group => (PriceWords.Of(group), group))]);
    public static readonly Words<bool> MarginShown = new(("shown", true), ("hidden", false));
    public static readonly Words<bool> AmountsShown = new(("lines", true), ("groups", false));
    public static readonly Words<bool> TotalShown = new(("range", true), ("likely", false));

    public static readonly Words<bool> Sold = new(("piece", false), ("bar", true));

    public static readonly Words<TrimJoints> TrimJoints = new(
        ("free", Engine.Rooms.TrimJoints.Free), ("in line", Engine.Rooms.TrimJoints.InLine), ("staggered", Engine.Rooms.TrimJoints.Staggered),
        ("repeating", Engine.Rooms.TrimJoints.Repeating), ("centred", Engine.Rooms.TrimJoints.Centred), ("none", Engine.Rooms.TrimJoints.Unbroken));

    public static readonly Words<TrimCorner> TrimCorners = new(
        ("mitred", TrimCorner.Mitred), ("covers", TrimCorner.Covers), ("butts", TrimCorner.Butts), ("piece", TrimCorner.Piece));

    public static readonly Words<CornerFinish> Finishes = new(
        ("bullnose over", CornerFinish.BullnoseOver), ("bullnose under", CornerFinish.BullnoseUnder), ("mitre", CornerFinish.Mitre), ("profile", CornerFinish.Profile));

    public static readonly Words<Sureness> Sure = new(("held", Sureness.Held), ("held within range", Sureness.WithinRange), ("at risk", Sureness.AtRisk));
    public static readonly Words<bool> SurveyCorners = new(("inside corner", false), ("outside corner", true));
    public static readonly Words<ReadAs> Held = new(("level", ReadAs.Level), ("plumb", ReadAs.Plumb));
    public static readonly Words<Instrument> Instruments = new(("tape", Instrument.Tape), ("laser", Instrument.Laser), ("level", Instrument.Level), ("plumb", Instrument.Plumb));

    public static readonly Words<Perimeter> Perimeters = new(("level", Perimeter.Level), ("constant", Perimeter.Constant));
    public static readonly Words<bool> FlatKinds = new(("floor", true), ("wall", false));
    public static readonly Words<bool> FixtureEnds = new(("foot", false), ("head", true));
    public static readonly Words<bool> HeightBases = new(("floor", false), ("level line", true));
    public static readonly Words<BoardLay> BoardLays = new(("either", BoardLay.Either), ("across", BoardLay.Across), ("along", BoardLay.Along));
    public static readonly Words<bool> StudsRun = new(("plumb", false), ("level", true));
    public static readonly Words<Lay> Lays = new(("level", Lay.Level), ("upright", Lay.Upright));
    public static readonly Words<Stepping> Steps = new(("one way", Stepping.OneWay), ("back and forth", Stepping.BackAndForth));
    public static readonly Words<bool> HexagonEnds = new(("point", true), ("flat", false));
    public static readonly Words<bool> BorderCorners = new(("mitred", true), ("butt", false));
    public static readonly Words<Corners> CornerWays = new(("wrap", Corners.Wrap), ("restart", Corners.Restart));
    public static readonly Words<CentreOn> Centres = new(("tile", CentreOn.Tile), ("joint", CentreOn.Joint), ("either", CentreOn.Either));

    public static readonly Words<CuttingAim> CuttingAims = new(
        ("tiles", CuttingAim.Tiles), ("laid by", CuttingAim.LaidBy), ("cuts", CuttingAim.Cuts), ("courses", CuttingAim.Courses), ("offcuts", CuttingAim.Offcuts));

    public static readonly Words<Criterion> Criteria = new(
        ("musts", Criterion.Musts), ("wishes", Criterion.Wishes), ("slivers", Criterion.Slivers), ("smallest", Criterion.Smallest),
        ("mirror", Criterion.Mirror), ("cuts", Criterion.Cuts), ("tiles", Criterion.Tiles));

    public static readonly Words<Clocks> ClockRules = new(("none", Clocks.None), ("EU", Clocks.Eu), ("UK", Clocks.Uk), ("US", Clocks.Us), ("AU", Clocks.Au), ("NZ", Clocks.Nz));
    public static readonly Words<bool> FloorOrders = new(("after walls", false), ("before walls", true));

    public static readonly Words<DayOfWeek> Days = new(
        ("mon", DayOfWeek.Monday), ("tue", DayOfWeek.Tuesday), ("wed", DayOfWeek.Wednesday), ("thu", DayOfWeek.Thursday), ("fri", DayOfWeek.Friday), ("sat", DayOfWeek.Saturday), ("sun", DayOfWeek.Sunday));

    public static readonly Words<HoldFrom> HoldsFrom = new(("none", HoldFrom.None), ("product", HoldFrom.Product), ("job", HoldFrom.Job), ("published", HoldFrom.Published), ("nobody", HoldFrom.Nobody));
    public static readonly Words<SetStage> Stages = new(("none", SetStage.None), ("up", SetStage.Up), ("below", SetStage.Below), ("waiting", SetStage.Waiting));

    public static readonly Words<PaceUnit> PaceUnits = new(
        ("minutes", PaceUnit.Minutes), ("m2", PaceUnit.SquareMetres), ("m", PaceUnit.Metres), ("pieces", PaceUnit.Pieces), ("cuts", PaceUnit.Cuts), ("lines", PaceUnit.Lines));

    /// <summary>The days of a week as they are counted from its first day of work.</summary>
    public static IEnumerable<DayOfWeek> WorkDays => Days.All.Select(day => Days.Read(day)!.Value);

    /// <summary>The fields of a pace, by the kind of work; a task's kind is called alike in plan.json.</summary>
    public static readonly IReadOnlyList<(string Field, WorkKind Kind)> PaceFields =
    [
        ("protection", WorkKind.Protection), ("tearOut", WorkKind.TearOut), ("boards", WorkKind.Boards), ("seams", WorkKind.Seams), ("levelling", WorkKind.Levelling), ("bed", WorkKind.Bed),
        ("primer", WorkKind.Primer), ("membrane", WorkKind.Membrane), ("floodTest", WorkKind.FloodTest), ("lines", WorkKind.Lines), ("setting", WorkKind.Setting), ("returns", WorkKind.Returns),
        ("floorCover", WorkKind.FloorCover), ("trims", WorkKind.Trims), ("grouting", WorkKind.Grouting), ("softJoints", WorkKind.SoftJoints), ("sealer", WorkKind.Sealer), ("handOver", WorkKind.HandOver),
    ];

    /// <summary>The fields of holds, of a product or of the job.</summary>
    public static readonly IReadOnlyList<(string Field, HoldKind Kind)> HoldFields =
    [
        ("seams", HoldKind.Seams), ("levelling", HoldKind.Levelling), ("bed", HoldKind.Bed), ("primer", HoldKind.Primer), ("coat", HoldKind.Coat), ("test", HoldKind.Test),
        ("support", HoldKind.Support), ("walk", HoldKind.Walk), ("grout", HoldKind.Grout), ("soft", HoldKind.Soft), ("sealer", HoldKind.Sealer), ("water", HoldKind.Water),
    ];
}
