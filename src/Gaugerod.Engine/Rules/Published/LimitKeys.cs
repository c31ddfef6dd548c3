namespace Gaugerod.Engine.Rules.Published;

/// <summary>What limits are called, so that a check and its row cannot miss each other by a letter.</summary>
internal static class LimitKeys
{
    public const string
        LargeSide = "large-tile",
        FlatSmall = "flat-small", FlatSmallShort = "flat-small-short", FlatLarge = "flat-large", FlatLargeShort = "flat-large-short",
        FlatSmallMetric = "flat-small-metric", FlatSmallShortMetric = "flat-small-short-metric", FlatLargeMetric = "flat-large-metric", FlatLargeShortMetric = "flat-large-short-metric",
        Flat = "flat", FlatFloor = "flat-floor", FlatWall = "flat-wall", FlatFloorStrict = "flat-floor-strict", FlatWallStrict = "flat-wall-strict",
        JointLeast = "joint", JointFloor = "joint-floor", JointWall = "joint-wall", JointSmallTile = "joint-small-tile",
        JointVariation = "joint-variation", JointOffsetRectified = "joint-offset-rectified", JointOffset = "joint-offset",
        Offset = "offset", Lippage = "lippage", LippageWide = "lippage-wide", LippagePolished = "lippage-polished", Caliber = "caliber", CaliberCap = "caliber-cap",
        MovementInside = "movement-inside", MovementSun = "movement-sun", MovementOutside = "movement-outside", MovementWall = "movement-wall", MovementPerimeter = "movement-perimeter", MovementArea = "movement-area",
        SoftWidth = "soft-joint-width", SoftDepth = "soft-joint-depth", SoftShape = "soft-joint-shape",
        MortarBed = "mortar-bed", MortarHeavy = "mortar-bed-heavy", ContactDry = "contact-dry", ContactWet = "contact-wet", AdhesiveC1 = "adhesive-c1", AdhesiveC2 = "adhesive-c2",
        FallLeast = "fall-least", FallMost = "fall-most", Curb = "curb", ShowerArea = "shower-area", ShowerDisc = "shower-disc", WallFinish = "wall-finish", FloodDepth = "flood-depth", FloodCode = "flood-code", FloodCustom = "flood-custom", Upturn = "upturn", MembraneOut = "membrane-out",
        OverLiner = "bed-over-liner", OverLinerStrict = "bed-over-liner-strict", BedThick = "bed-thick", BedReinforced = "bed-reinforced",
        BoardWall = "board-wall", BoardStuds = "board-studs", BoardJoists = "board-joists", BoardScrews = "board-screws", BoardInset = "board-inset", BoardFoot = "board-foot",
        Silica = "silica", SilicaAction = "silica-action", LeadInside = "lead-inside", LeadOutside = "lead-outside", LoadOfOne = "lifting", Alkali = "alkali";
}
