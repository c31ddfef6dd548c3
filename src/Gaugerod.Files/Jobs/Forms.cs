namespace Gaugerod.Files.Jobs;

/// <summary>Every group of the job file and its fields.</summary>
internal static class Forms
{
    public const string ALength = "a length such as \"40 1/2\"";

    private const string ASmallLength = "a length such as \"1/8\"";

    private static readonly (string Inches, string Millimetres)[] Examples =
    [
        ("\"40 1/2\"", "1028"), ("\"1/8\"", "3"), ("\"-1/16\"", "-2"), ("\"1/16\"", "1.6"), ("\"48\"", "1220"), ("\"48 1/8\"", "1223"), ("\"96\"", "2440"),
        ("such as \"1/2\"", "such as 12"), ("\"18\"", "460"), ("such as \"2\"", "such as 50"),
    ];

    private const string AName = "a name such as \"north\"";

    private static readonly Field Flatness = new("flatness", "a group such as { \"grid\": { ... } }");
    private static readonly Field Beneath = new("under", "a group such as { \"membrane\": { \"of\": \"membrane\" } }");

    private static readonly Field HeightsFrom = new("heightsFrom", "\"floor\" or \"level line\"");

    public static readonly Form Job = new(
        "job",
        new("format", "\"gaugerod-job/1\"", true), new("name", "a name such as \"Guest shower\"", true), new("note", "text"),
        new("region", "\"US\", \"UK\", \"EU\" or \"AU\""),
        new("units", "\"in\" or \"mm\"", true), new("tape", ASmallLength), new("paper", "\"letter\" or \"a4\""), new("edgeJoint", ASmallLength), new("cutting", "a group such as { \"order\": [\"tiles\", \"cuts\"] }"), new("tolerances", "a group such as { \"setOut\": \"1/16\" }"),
        new("products", "a list of tiles [ ]", true), new("trims", "a list of trims [ ]"), new("boards", "a list of boards [ ]"), new("supplies", "a list of what is bought by the pack [ ]"), new("fills", "a list such as [{ \"name\": \"bench\", \"of\": \"block\" }]"), new("prices", "a group such as { \"currency\": \"EUR\" }"), new("faces", "a list of faces [ ]", true), new("runs", "a list of runs [ ]", true), new("work", "a group such as { \"start\": \"2027-03-08\" }"), new("handover", "a group such as { \"renew\": 5 }"));

    public static readonly Form Product = new(
        "product",
        new("name", "a name such as \"wall tile\"", true), new("width", ALength, true), new("height", ALength, true),
        new("thickness", ASmallLength), new("bondCoat", ASmallLength), new("perBox", "a whole number such as 12"),
        new("turn", "\"free\", \"half\" or \"none\""), new("grain", "\"along width\" or \"along height\""), new("blend", "a whole number such as 3"),
        new("class", "\"natural\", \"calibrated\" or \"rectified\""),
        new("variation", ASmallLength), new("warpage", ASmallLength), new("kerf", "a length such as \"1/16\""), new("cut", "\"wet saw\" or \"snap\""), new("leastStrip", "a length such as \"1/2\""),
        new("breakage", "a whole number such as 3"), new("spares", "a whole number such as 6"), new("flatPercent", "a whole number such as 5, or null"));

    public static readonly Form Trim = new(
        "trim",
        new("name", "a name such as \"bullnose\"", true), new("kind", "a kind such as \"bullnose\"", true), new("length", ALength), new("width", "a length such as \"2\""),
        new("joint", ASmallLength), new("least", "a length such as \"2\""), new("thickness", ASmallLength), new("kerf", "a length such as \"1/16\""),
        new("sold", "\"piece\" or \"bar\""), new("outside", "a length such as \"2\""), new("inside", "a length such as \"2\""), new("stop", "a length such as \"2\""),
        new("breakage", "a whole number such as 3"), new("spares", "a whole number such as 6"), new("flatPercent", "a whole number such as 5, or null"));

    public static readonly Form EdgeTrim = new(
        "edgeTrim", new("of", "a trim's name", true), new("joints", "\"staggered\""), new("stagger", "a length such as \"2\""), new("corner", "\"mitred\""), new("left", "a group such as { \"corner\": \"covers\" }"), new("right", "a group such as { \"return\": \"3\" }"));

    public static readonly Form TrimEnding = new("trimEnding", new("corner", "\"mitred\""), new("return", "a length such as \"3\""));

    public static readonly Form Tolerances = new("tolerances", new("reading", ASmallLength), new("setOut", ASmallLength), new("joint", ASmallLength));

    public static readonly Form Cutting = new("cutting", new("order", "a list [ ]"), new("fence", ASmallLength), new("keep", "a length such as \"2\""));

    private static readonly Field Beds = new("beds", "a list such as [{ \"floor\": \"shower floor\", \"edge\": \"north\" }]");

    public static readonly Form OnBed = new(
        "onBed", new("side", "a level edge's name, such as \"foot\""), new("floor", "the floor's name", true), new("edge", "an edge of that floor", true), new("from", ALength), new("lowest", ALength));

    public static readonly Form OutlineFace = new(
        "outlineFace",
        new("name", AName, true), new("outline", "a list of corners [[x, y], ...]", true), new("edges", "a list with one edge for each side", true),
        new("levelLine", ALength), new("openings", "a list [ ]"), new("holes", "a list [ ]"), new("zones", "a list [ ]"), new("falls", "a group such as { \"to\": \"drain\" }"), Beds, Flatness, Beneath, BoardForms.OfFace);

    public static readonly Form ReadFace = new(
        "readFace",
        new("name", AName, true), new("readings", "a group { } with width and height", true),
        new("edges", "a group { } with foot, right, head or left"), new("fixtures", "a list [ ]"), new("openings", "a list [ ]"), new("holes", "a list [ ]"), new("zones", "a list [ ]"), new("falls", "a group such as { \"to\": \"drain\" }"), Beds, Flatness, Beneath, BoardForms.OfFace);

    public static readonly Form SurveyedFace = new(
        "surveyedFace",
        new("name", AName, true), new("survey", "a group { } with corners and readings", true), new("edges", "a list with one edge for each side", true),
        new("openings", "a list [ ]"), new("holes", "a list [ ]"), new("zones", "a list [ ]"), new("falls", "a group such as { \"to\": \"drain\" }"), Beds, Flatness, Beneath, BoardForms.OfFace);

    public static readonly Form Survey = new(
        "survey",
        new("corners", "a list of names such as [\"A\", \"B\", \"C\", \"D\"]", true), new("readings", "a list of readings such as [{ \"from\": \"A\", \"to\": \"B\", \"is\": \"60 1/4\" }]", true),
        new("spots", "a list of names such as [\"drain\"]"), new("accuracy", "a group such as { \"tape\": \"1/16\" }"), new("comesOff", "a list such as [{ \"side\": [\"A\", \"B\"], \"is\": \"3/8\" }]"),
        new("same", "a list such as [{ \"side\": [\"A\", \"B\"], \"face\": \"floor\", \"as\": [\"C\", \"D\"] }]"));

    public static readonly Form SurveyCorner = new("surveyCorner", new("name", "a name such as \"D\"", true), new("is", "\"outside corner\""), new("near", "a place [x, y]"));

    public static readonly Form SurveyReading = new(
        "surveyReading",
        new("is", ALength, true), new("from", "a corner or a mark"), new("to", "a corner or a mark"), new("held", "\"level\" or \"plumb\""), new("corner", "a corner's name"),
        new("legs", "two lengths, to the next corner and to the one before [ , ]"), new("side", "two corners [ , ]"), new("strings", "two strings [[ , ], [ , ]]"),
        new("by", "\"tape\""), new("within", ASmallLength));

    public static readonly Form Mark = new("mark", new("from", "a corner's name", true), new("towards", "a corner's name", true), new("at", ALength, true));

    public static readonly Form Accuracy = new("accuracy", new("tape", ASmallLength), new("laser", ASmallLength), new("level", ASmallLength), new("plumb", ASmallLength));

    public static readonly Form ComesOff = new("comesOff", new("side", "two corners [ , ]", true), new("is", ASmallLength, true), new("within", ASmallLength));

    public static readonly Form SharedSide = new("sharedSide", new("side", "two corners [ , ]", true), new("face", "another surveyed face's name", true), new("as", "its two corners there [ , ]", true), new("within", ASmallLength));

    public static readonly Form Readings = new(
        "readings",
        new("width", "a group such as { \"foot\": \"40 1/2\" }", true), new("height", "a group such as { \"left\": \"96\" }", true),
        new("levelLine", "a group such as { \"left\": \"48\", \"right\": \"48 1/8\" }"), new("lean", "a group such as { \"left\": \"1/8\", \"right\": \"-1/16\" }"));

    public static readonly Form Width = new("width", new("foot", ALength, true), new("middle", ALength), new("top", ALength));
    public static readonly Form Height = new("height", new("left", ALength, true), new("right", ALength));
    public static readonly Form LevelLine = new("levelLine", new("left", ALength, true), new("right", ALength, true), new("between", "a list of places and heights [[\"24\", \"48 1/4\"], ...]"));
    public static readonly Form Lean = new("lean", new("left", ASmallLength), new("right", ASmallLength));

    public static readonly Form FaceSides = new("faceSides", new("foot", "an edge { }"), new("right", "an edge { }"), new("head", "an edge { }"), new("left", "an edge { }"));
    public static readonly Form OpeningSides = new("openingSides", new("bottom", "an edge { }"), new("right", "an edge { }"), new("top", "an edge { }"), new("left", "an edge { }"));

    public static readonly Form Edge = new("edge", EdgeFields(kindRequired: false));
    public static readonly Form FaceEdge = new("faceEdge", [new("name", "a name such as \"left\""), .. EdgeFields(kindRequired: true)]);
    public static readonly Form OpeningEdge = new("openingEdge", [new("name", "a name such as \"slope\""), .. EdgeFields(kindRequired: false)]);

    public static readonly Form Fixture = new(
        "fixture",
        new("name", "a name such as \"bench\"", true), new("at", "\"foot\" or \"head\""), new("from", ALength), new("to", ALength),
        new("height", ALength), new("heightLeft", ALength), new("heightRight", ALength), HeightsFrom, new("edge", "an edge { }"), new("side", "an edge { }"), new("range", "two lengths, the least and the most [ , ], or a group such as { \"to\": [14, 18] }"));

    public static readonly Form RectangleOpening = new(
        "rectangleOpening",
        new("name", "a name such as \"window\"", true), new("left", ALength, true), new("bottom", ALength, true), new("width", ALength, true), new("height", ALength, true),
        HeightsFrom, new("edge", "an edge { }"), new("edges", "a group { } with bottom, right, top or left"), new("range", "a group such as { \"bottom\": [40, 46] }"), new("depth", ALength));

    public static readonly Form OutlineOpening = new(
        "outlineOpening",
        new("name", "a name such as \"window\"", true), new("outline", "a list of corners [[x, y], ...]", true),
        HeightsFrom, new("edge", "an edge { }"), new("edges", "a list with one edge for each side"));

    public static readonly Form Arc = new("arc", new("to", "a corner [x, y]", true), new("through", "a point [x, y] on the arc", true));

    public static readonly Form Hole = new(
        "hole",
        new("name", "a name such as \"valve\"", true), new("x", ALength), new("y", ALength), new("spot", "a spot of the face's survey"), new("diameter", ALength, true), HeightsFrom, new("clearance", ASmallLength), new("edgeClear", "a length such as \"1/2\""));

    public static readonly Form BandZone = new(
        "band", new("kind", "\"band\"", true), new("name", "a name such as \"upper\"", true), new("from", ALength, true), new("to", ALength), HeightsFrom, new("range", "two lengths, the least and the most [ , ]"), new("joint", ASmallLength),
        new("trim", "a group such as { \"of\": \"liner\" }"));

    public static readonly Form RugZone = new(
        "rug",
        new("kind", "\"rug\"", true), new("name", "a name such as \"rug\"", true), new("left", ALength, true), new("bottom", ALength, true), new("width", ALength, true), new("height", ALength, true),
        HeightsFrom, new("joint", ASmallLength));

    public static readonly Form BorderZone = new(
        "border", new("kind", "\"border\"", true), new("name", "a name such as \"frame\"", true), new("width", ALength, true), new("corners", "\"mitred\" or \"butt\""), new("joint", ASmallLength));

    private const string ARange = "two lengths, the least and the most [ , ]";

    public static readonly Form OpeningRange = new("openingRange", new("left", ARange), new("bottom", ARange), new("width", ARange), new("height", ARange), new("studs", "the two studs' near faces [ , ]"));

    public static readonly Form FixtureRange = new("fixtureRange", new("height", ARange), new("from", ARange), new("to", ARange));

    public static readonly Form Falls = new(
        "falls",
        new("to", "a hole's name"), new("lines", "a list of lines [[[x, y], [x, y]], ...]"), new("drains", "a list of holes' names and of channels [[x, y], [x, y]]"), new("toward", "an edge's name, such as \"front\""),
        new("least", "a length such as \"2\""), new("fall", "a fall such as \"1/4 per ft\""), new("perimeter", "\"level\" or \"constant\""),
        new("curb", "a length such as \"2\""), new("threshold", "a length such as \"2\""), new("density", "a weight such as \"144 lb/ft3\""), new("bag", "a group such as { \"yield\": \"0.5 ft3\" }"));

    public static readonly Form FlatnessOf = new(
        "flatness",
        new("of", "\"floor\" or \"wall\""), new("grid", "a group { } with from, step and heights"), new("points", "a list of readings such as [{ \"at\": [x, y], \"height\": \"1/8\" }]"),
        new("straightedge", "a list such as [{ \"from\": [x, y], \"to\": [x, y], \"gaps\": [0, \"1/8\", 0] }]"));

    public static readonly Form FlatGrid = new("flatGrid", new("from", "a place [x, y]", true), new("step", "a length, or two, right and up [ , ]", true), new("heights", "a list of rows [[ , ], [ , ]]"), new("gaps", "a list of rows [[ , ], [ , ]]"));

    public static readonly Form FlatPoint = new("flatPoint", new("at", "a place [x, y]", true), new("height", ASmallLength), new("gap", ASmallLength));

    public static readonly Form FlatLaid = new("flatLaid", new("from", "a place [x, y]", true), new("to", "a place [x, y]", true), new("gaps", "three gaps or more [ , , ]", true));

    /// <summary>The zones, by their kind.</summary>
    public static readonly IReadOnlyList<Form> Zones = [BandZone, RugZone, BorderZone];

    public static readonly Form Run = new(
        "run",
        new("name", "a name such as \"shower\"", true), new("product", "a product's name", true), new("faces", "a list of faces' names", true),
        new("bond", "a group such as { \"kind\": \"grid\" }", true), new("corners", "\"wrap\" or \"restart\""), new("joint", "a length such as \"1/8\", or a group with wanted", true),
        new("through", "a face's name"), new("limits", "a group { }"), new("wants", "a list [ ]"), new("order", "a list [ ]"),
        new("place", "a group such as { \"x\": \"48\", \"y\": \"18\" }"), new("set", "a list such as [{ \"face\": \"north\", \"courses\": 3 }]"),
        new("setting", "a group such as { \"mortar\": \"wall mortar\" }"), new("movement", "a group such as { \"exposure\": \"sun\" }"));

    public static readonly Form Movement = new("movement", new("exposure", "\"sun\""), new("most", ALength));

    public static readonly Form SetSoFar = new(
        "setSoFar",
        new("face", "a face's name", true), new("courses", "a whole number such as 3", true), new("from", "a whole number such as 2"), new("top", "a length, or a group such as { \"left\": \"27 5/8\", \"right\": \"27 3/4\" }"), new("aside", "a length such as \"1/8\""), new("cut", "a list of pieces such as [\"A4\"]"));

    public static readonly Form SetTop = new("setTop", new("left", ALength), new("right", ALength));

    public static readonly Form JointRange = new("jointRange", new("least", ASmallLength), new("wanted", ASmallLength, true), new("most", ASmallLength));
    public static readonly Form Limits = new("limits", new("smallest", ALength), new("sliver", "a length such as \"2\""), new("halfTile", "true or false"), new("cuts", "\"as planned\" or \"at worst\""));
    public static readonly Form Place = new("place", new("x", ALength, true), new("y", ALength, true), new("joint", ASmallLength));
    public static readonly Form EdgeRef = new("edgeRef", new("face", "a face's name"), new("edge", "an edge's name", true));

    public static readonly Form JointWant = new("jointWant", Want(new("face", "a face's name", true), new("height", ALength), HeightsFrom, new("edge", "an edge's name")));
    public static readonly Form AtLeastWant = new("atLeastWant", Want(new("face", "a face's name", true), new("edge", "an edge's name", true), new("size", ALength), new("part", "a part such as \"1/2\"")));
    public static readonly Form CentredWant = new("centredWant", Want(new("face", "a face's name", true), new("opening", "an opening's name"), new("on", "\"tile\", \"joint\" or \"either\"")));
    public static readonly Form InLineWant = new("inLineWant", Want(new("face", "a face's name", true), new("with", "the name of another zone of the wall", true)));
    public static readonly Form HoleWant = new("holeWant", Want(new("face", "a face's name", true), new("hole", "a hole's name", true), new("on", "\"tile\", \"joint\" or \"either\"")));
    public static readonly Form EqualWant = new("equalWant", Want(new("face", "a face's name", true), new("edge", "an edge's name", true), new("and", "a group such as { \"face\": \"east\", \"edge\": \"right\" }", true)));
    public static readonly Form FullCourseWant = new("fullCourseWant", Want(new("face", "a face's name", true), new("edge", "an edge's name", true)));

    public static readonly IReadOnlyList<Form> All =
    [
        Job, .. WorkForms.All, .. PriceForms.All, .. HandOverForms.All, .. SupplyForms.All, Movement, Product, Trim, EdgeTrim, TrimEnding, Cutting, Tolerances, OutlineFace, ReadFace, SurveyedFace, Survey, SurveyCorner, SurveyReading, Mark, Accuracy, ComesOff, SharedSide, Readings, Width, Height, LevelLine, Lean, FaceSides, OpeningSides, Edge, FaceEdge, OpeningEdge, Fixture,
        RectangleOpening, OutlineOpening, Arc, Hole, .. Zones, Falls, .. MixForms.All, OnBed, FlatnessOf, FlatGrid, FlatPoint, FlatLaid, OpeningRange, FixtureRange, Run, .. BondForms.All, BondForms.Turns, JointRange, Limits, Place, SetSoFar, SetTop, EdgeRef, JointWant, AtLeastWant, CentredWant, InLineWant, HoleWant,
        EqualWant, FullCourseWant, .. BoardForms.All,
    ];

    /// <summary>The names of every group's fields: one that stands in another group than its own was meant to be there.</summary>
    public static readonly IReadOnlySet<string> EveryName = All.SelectMany(form => form.Names).ToHashSet(StringComparer.Ordinal);

    /// <summary>An example as it is said in a job in millimetres, where a fraction would be read as inches.</summary>
    public static string InMillimetres(string example) =>
        example.Contains("a part", StringComparison.Ordinal)
            ? example
            : Examples.Aggregate(example, (text, pair) => text.Replace(pair.Inches, pair.Millimetres, StringComparison.Ordinal));

    private static Field[] EdgeFields(bool kindRequired) =>
    [
        new("kind", "a kind such as \"inside corner\"", kindRequired), new("joint", ASmallLength), new("trim", "a length such as \"1/2\", or a group with of"), new("cover", ALength),
        new("lap", "\"through\" or \"laps\""), new("finish", "\"profile\""), new("sealed", "true or false"),
    ];

    private static Field[] Want(params Field[] own) =>
        [new("want", "a want such as \"joint\"", true), .. own, new("must", "true or false"), new("weight", "a whole number such as 2")];
}
