namespace Gaugerod.Files.Jobs;

/// <summary>The groups of the job file that name a bond, and their fields.</summary>
internal static class BondForms
{
    private const string AProduct = "a product's name";

    private static readonly Field Turned = new("turned", "a number of degrees such as 45, or a group with from, to and step");

    public static readonly Form Turns = new(
        "turns", new("from", "a number of degrees such as 0", true), new("to", "a number of degrees such as 90", true), new("step", "a number of degrees such as 5", true));

    public static readonly Form Grid = Of("grid", new Field("lay", "\"level\" or \"upright\""));

    public static readonly Form Running = Of(
        "running", new("offset", "a part such as \"1/3\"", true), new("lay", "\"level\" or \"upright\""), new("step", "\"one way\" or \"back and forth\""));

    public static readonly Form Herringbone = Of("herringbone", new Field("abreast", "a whole number such as 2"));
    public static readonly Form Basketweave = Of("basketweave");
    public static readonly Form Pinwheel = Of("pinwheel", new Field("small", AProduct, true));
    public static readonly Form Windmill = Of("windmill", new Field("square", AProduct, true));
    public static readonly Form Hexagon = Of("hexagon", new("up", "\"point\" or \"flat\""), new("point", Forms.ALength));
    public static readonly Form Octagon = Of("octagon", new("square", AProduct, true), new("corner", Forms.ALength));
    public static readonly Form Chevron = Of("chevron", new("slope", "a number of degrees such as 45", true), new("down", AProduct));
    public static readonly Form Modular = Of("modular", new Field("with", "a list of three products' names [ ]", true));

    public static readonly Form Planks = Of(
        "planks", new("stagger", Forms.ALength, true), new("start", "a word such as \"hall\"", true), new("with", "a list of products' names [ ]"));

    public static readonly Form Mosaic = Of("mosaic", new("across", "a whole number such as 12", true), new("high", "a whole number such as 12", true));

    /// <summary>Every bond's form, by its kind.</summary>
    public static readonly IReadOnlyList<Form> All =
        [Grid, Running, Herringbone, Basketweave, Pinwheel, Windmill, Hexagon, Octagon, Chevron, Modular, Planks, Mosaic];

    private static Form Of(string kind, params Field[] own) => new(kind, [new("kind", $"\"{kind}\"", true), .. own, Turned]);
}
