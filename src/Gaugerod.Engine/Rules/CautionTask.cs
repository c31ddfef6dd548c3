namespace Gaugerod.Engine.Rules;

/// <summary>The tasks that cautions are told by.</summary>
internal static class CautionTask
{
    public const string TearOut = "tear-out", Boards = "boards", Levelling = "levelling", Bed = "bed", Membrane = "membrane", FloodTest = "flood test", Setting = "setting", Cutting = "cutting", Trims = "trims", Grout = "grout", SoftJoints = "soft joints", Sealer = "sealer", Electric = "electric", Glass = "glass";

    private const string Dust = "caution-dust", Masks = "caution-mask", Current = "caution-electricity", Saw = "caution-saw", Cement = "caution-cement", OldWork = "caution-old-work", Lead = "caution-lead", Lift = "caution-lifting", Hidden = "caution-hidden", Water = "caution-water", Panes = "caution-glass", Air = "caution-air", Weight = "caution-flood";

    /// <summary>All of them, in the order in which they come up.</summary>
    public static IReadOnlyList<string> All { get; } = [TearOut, Boards, Levelling, Bed, Membrane, FloodTest, Setting, Cutting, Trims, Grout, SoftJoints, Sealer, Electric, Glass];

    /// <summary>Which cautions a task asks for, the gravest first; none for a task that is not known here.</summary>
    public static IReadOnlyList<string> Rules(string task) => task switch
    {
        TearOut => [OldWork, Lead, Hidden, Dust, Masks, Lift],
        Boards => [Dust, Masks, Hidden, Lift],
        Levelling => [Dust, Masks, Cement, Lift],
        Bed => [Cement, Dust, Lift],
        Membrane => [Water, Air],
        FloodTest => [Weight, Water],
        Setting => [Cement, Dust, Lift],
        Cutting => [Saw, Current, Dust, Masks],
        Trims => [Saw, Cement],
        Grout => [Cement, Dust],
        SoftJoints or Sealer => [Air],
        Electric => [Current, Hidden],
        Glass => [Panes, Lift],
        _ => [],
    };
}
