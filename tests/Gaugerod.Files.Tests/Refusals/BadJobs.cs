namespace Gaugerod.Files.Tests.Refusals;

/// <summary>Good jobs with one value that cannot be: every number of every bond, of zones, holes, arcs and ranges.</summary>
internal static class BadJobs
{
    private const string Bond = "runs[0].bond";
    private const string Tile = "products[0]";
    private const string Other = "products[1]";

    public static IEnumerable<Slip> Bonds() =>
    [
        .. Each(GoodJobs.Running, Bond + ".offset", "0.5", "'3/2'", "'2/2'", "'1/65'", "33"),
        .. Each(GoodJobs.Grid, Bond + ".turned", "361", "-400", "45.0001"),
        .. Each(GoodJobs.Grid, Bond, "'herringbone'", "'running'", "'grid'"),
        .. Each(GoodJobs.Turned, Bond + ".turned.step", "0", "-5", "0.1"),
        .. Each(GoodJobs.Turned, Bond + ".turned.from", "90", "400"),
        .. Each(GoodJobs.Herringbone, Bond + ".abreast", "0", "-1", "4", "5", "1.5", "'2'"),
        .. Each(GoodJobs.Herringbone, Tile + ".height", "299", "150", "301", "4000", "3"), .. Each(GoodJobs.Herringbone, Tile + ".width", "150", "90", "60", "5000"),
        .. Each(GoodJobs.Basketweave, Tile + ".width", "300", "250", "100", "5"), .. Each(GoodJobs.Basketweave, Tile + ".height", "90", "306", "2500", "4000", "20"),
        .. Each(GoodJobs.Pinwheel, Tile + ".width", "190", "50"), .. Each(GoodJobs.Pinwheel, Other + ".height", "110"), new(GoodJobs.Pinwheel, "products", "[{ 'name': 'a', 'width': 100, 'height': 100 }, { 'name': 'b', 'width': 200, 'height': 200 }]"),
        new(GoodJobs.Pinwheel, "products", "[{ 'name': 'a', 'width': 100, 'height': 100 }, { 'name': 'b', 'width': 100, 'height': 100 }]"), new(GoodJobs.Pinwheel, Bond + ".small", "'a'"), new(GoodJobs.Pinwheel, Bond + ".small", "'B'"),
        .. Each(GoodJobs.Windmill, Tile + ".width", "102", "100", "90", "250"), .. Each(GoodJobs.Windmill, Tile + ".height", "90", "200", "300", "3999"),
        .. Each(GoodJobs.Windmill, Other + ".width", "101", "50"), .. Each(GoodJobs.Windmill, Other + ".height", "90"),
        .. Each(GoodJobs.Hexagon, Tile + ".height", "200", "240", "4000"), .. Each(GoodJobs.Hexagon, Tile + ".width", "230", "3900"), .. Each(GoodJobs.Hexagon, Bond + ".point", "0", "200", "-20", "116", "5000"),
        .. Each(GoodJobs.LongHexagon, Bond + ".point", "0", "150", "-60", "151"), .. Each(GoodJobs.LongHexagon, Tile + ".height", "120", "100", "6"),
        .. Each(GoodJobs.Octagon, Other + ".width", "60", "150"), new(GoodJobs.Octagon, Other, "{ 'name': 'b', 'width': 150, 'height': 150 }"), new(GoodJobs.Octagon, Other, "{ 'name': 'b', 'width': 3000, 'height': 3000 }"),
        .. Each(GoodJobs.Octagon, Tile + ".width", "190", "80"), new(GoodJobs.Octagon, Tile, "{ 'name': 'a', 'width': 9, 'height': 9 }"),
        .. Each(GoodJobs.CornerOctagon, Bond + ".corner", "0", "-50", "100", "120", "30", "1", "95", "5000"), new(GoodJobs.CornerOctagon, Other, "{ 'name': 'b', 'width': 20, 'height': 20 }"), new(GoodJobs.CornerOctagon, Other, "{ 'name': 'b', 'width': 190, 'height': 190 }"),
        .. Each(GoodJobs.Chevron, Bond + ".slope", "0", "-30", "89", "90", "89.9", "120", "-90", "361", "0.0001"), .. Each(GoodJobs.Chevron, Other + ".width", "610"), .. Each(GoodJobs.Chevron, Other + ".height", "80"),
        .. Each(GoodJobs.Modular, Tile + ".width", "600", "300"), .. Each(GoodJobs.Modular, Tile + ".height", "390"), .. Each(GoodJobs.Modular, Other + ".width", "400"), .. Each(GoodJobs.Modular, "products[2].height", "190"),
        .. Each(GoodJobs.Modular, "products[3].width", "190", "100"), new(GoodJobs.Modular, "products[3]", "{ 'name': 'd', 'width': 190, 'height': 190 }"), new(GoodJobs.Modular, "products[3]", "{ 'name': 'd', 'width': 197.3, 'height': 196.7 }"),
        .. Each(GoodJobs.Planks, Bond + ".stagger", "0", "-120", "2", "400", "600", "2000", "5000"), .. Each(GoodJobs.Planks, Other + ".height", "140"), .. Each(GoodJobs.LikePlanks, Bond + ".stagger", "0", "452", "900", "4000"),
        new(GoodJobs.LikePlanks, Tile + ".width", "150"), new(GoodJobs.LikePlanks, Tile + ".width", "20"),
        .. Each(GoodJobs.Mosaic, Bond + ".across", "0", "65", "1.5", "-12", "'12'"), .. Each(GoodJobs.Mosaic, Tile + ".width", "30", "5"),
        .. new[] { GoodJobs.Grid, GoodJobs.Herringbone, GoodJobs.Octagon, GoodJobs.Windmill, GoodJobs.Modular }.SelectMany(job => Each(job, Tile + ".width", "0", "-200", "4001", "'200 mn'")),
        new(GoodJobs.Herringbone, "runs[0].joint", "26"), new(GoodJobs.Basketweave, "runs[0].joint", "{ 'least': 2, 'wanted': 1, 'most': 3 }"), new(GoodJobs.Basketweave, "runs[0].joint", "25"), new(GoodJobs.Windmill, "runs[0].joint", "20"),
        new(GoodJobs.Modular, "runs[0].joint", "10"), new(GoodJobs.Turned, "runs[0].place", "{ 'x': 0, 'y': 0 }"),
    ];

    public static IEnumerable<Slip> Zones()
    {
        const string Zone = "faces[0].zones[0]", Second = "faces[0].zones[1]";
        var border = GoodJobs.Floor("'zones': [{ 'kind': 'border', 'name': 'frame', 'width': 150 }]");
        var rug = GoodJobs.Floor("'zones': [{ 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 500, 'width': 900, 'height': 600 }]");
        var band = GoodJobs.Floor("'zones': [{ 'kind': 'band', 'name': 'dado', 'from': 900, 'to': 1000 }, { 'kind': 'band', 'name': 'upper', 'from': 1000 }]");
        var line = GoodJobs.Wall("'zones': [{ 'kind': 'band', 'name': 'dado', 'from': -300, 'to': -200, 'heightsFrom': 'level line' }, { 'kind': 'band', 'name': 'upper', 'from': -200, 'heightsFrom': 'level line' }]");
        var framedRug = GoodJobs.Floor("'zones': [{ 'kind': 'border', 'name': 'frame', 'width': 150 }, { 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 500, 'width': 900, 'height': 600 }]");
        var rugs = GoodJobs.Floor("'zones': [{ 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 500, 'width': 900, 'height': 600 }, { 'kind': 'rug', 'name': 'mat', 'left': 1700, 'bottom': 500, 'width': 300, 'height': 600 }]");
        var rugBand = GoodJobs.Floor("'zones': [{ 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 300, 'width': 900, 'height': 400 }, { 'kind': 'band', 'name': 'upper', 'from': 900 }]");
        var bandRug = GoodJobs.Floor("'zones': [{ 'kind': 'band', 'name': 'dado', 'from': 900, 'to': 1000 }, { 'kind': 'band', 'name': 'upper', 'from': 1000 }, { 'kind': 'rug', 'name': 'mat', 'left': 300, 'bottom': 300, 'width': 300, 'height': 50 }]");
        var bandBorder = GoodJobs.Floor("'zones': [{ 'kind': 'band', 'name': 'upper', 'from': 900 }, { 'kind': 'border', 'name': 'frame', 'width': 150 }]");
        var hatch = GoodJobs.Floor("'openings': [{ 'name': 'hatch', 'left': 200, 'bottom': 300, 'width': 200, 'height': 300 }], 'zones': [{ 'kind': 'border', 'name': 'frame', 'width': 150 }, { 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 500, 'width': 900, 'height': 600 }]");
        var gable = GoodJobs.Gable("'zones': [{ 'kind': 'rug', 'name': 'rug', 'left': 600, 'bottom': 500, 'width': 900, 'height': 600 }]");
        var gableFrame = GoodJobs.Gable("'zones': [{ 'kind': 'border', 'name': 'frame', 'width': 150 }]");
        return
        [
            .. Each(border, Zone + ".width", "0", "-150", "1", "1.5", "893", "895", "897", "900", "1200", "5000", "200000"), .. Each(border, Zone + ".joint", "26", "-3"), .. Each(border, Zone + ".corners", "'mitre'"),
            .. Each(gableFrame, Zone + ".width", "1000", "1200", "3000"),
            .. Each(rug, Zone + ".left", "-50", "0", "1600", "1500", "3000", "-2000"), .. Each(rug, Zone + ".bottom", "-100", "1300", "4000"), .. Each(rug, Zone + ".width", "0", "2", "1900", "9000", "-900"), .. Each(rug, Zone + ".height", "1", "3", "1300", "2000"),
            .. Each(gable, Zone + ".left", "1400", "-10", "5000"), .. Each(gable, Zone + ".bottom", "1400", "3000"), .. Each(gable, Zone + ".width", "1500", "4000"),
            .. Each(rugs, Second + ".left", "1400", "700", "1499", "1501", "600"), .. Each(rugs, Second + ".width", "900"),
            new(rugs, Second, "{ 'kind': 'rug', 'name': 'mat', 'left': 700, 'bottom': 600, 'width': 300, 'height': 300 }"), new(rugs, Second, "{ 'kind': 'rug', 'name': 'mat', 'left': 500, 'bottom': 700, 'width': 1200, 'height': 200 }"),
            .. Each(framedRug, Second + ".left", "100", "140", "1400"), .. Each(framedRug, Second + ".width", "1700", "3000"), .. Each(framedRug, Zone + ".width", "880", "895", "700"),
            .. Each(rugBand, Second + ".from", "500", "301", "699", "1900", "0", "-5", "1797"), new(rugBand, Second, "{ 'kind': 'band', 'name': 'dado', 'from': 100, 'to': 400 }"),
            .. Each(band, Zone + ".from", "1000", "1100", "0", "-10", "2000"), .. Each(band, Zone + ".to", "900", "800", "1797", "1900", "902", "901"), .. Each(band, Second + ".from", "950", "901", "1900", "1797"),
            new(band, Second, "{ 'kind': 'band', 'name': 'over', 'from': 950, 'to': 1100 }"), new(band, Second, "{ 'kind': 'band', 'name': 'over', 'from': 800, 'to': 950 }"), new(band, Second, "{ 'kind': 'band', 'name': 'over', 'from': 850, 'to': 1100 }"),
            .. Each(bandRug, "faces[0].zones[2].bottom", "860", "898", "955", "1760", "2000", "-100"),
            .. Each(line, Second + ".from", "-250", "-299", "2000", "-1300"), .. Each(line, Zone + ".to", "-350", "-300"),
            .. Each(bandBorder, Second + ".width", "445", "449", "500", "2000"), .. Each(bandBorder, Zone + ".from", "1900", "200"), .. Each(hatch, "faces[0].zones[0].width", "197", "250", "500", "895"), .. Each(hatch, Second + ".left", "300", "395", "150"),
            new(band, "faces[0].zones", "[{ 'kind': 'band', 'name': 'dado', 'from': 900, 'to': 1000 }]"),
        ];
    }

    public static IEnumerable<Slip> HolesAndArcs()
    {
        var hole = GoodJobs.Floor("'holes': [{ 'name': 'drain', 'x': 1000, 'y': 800, 'diameter': 80, 'clearance': 5 }]");
        var rugHole = GoodJobs.Floor("'holes': [{ 'name': 'drain', 'x': 1050, 'y': 800, 'diameter': 80 }], 'zones': [{ 'kind': 'rug', 'name': 'rug', 'left': 900, 'bottom': 700, 'width': 300, 'height': 200 }]");
        var arc = GoodJobs.Floor("'openings': [{ 'name': 'niche', 'outline': [[600, 400], [1000, 400], [1000, 800], { 'to': [600, 800], 'through': [800, 1000] }] }]");
        var column = GoodJobs.Floor("'openings': [{ 'name': 'column', 'outline': [{ 'to': [600, 800], 'through': [800, 1000] }, { 'to': [1000, 800], 'through': [800, 600] }] }]");
        var range = GoodJobs.Floor("'openings': [{ 'name': 'niche', 'left': 600, 'bottom': 400, 'width': 300, 'height': 300, 'range': { 'left': [580, 700], 'studs': [550, 950], 'width': [250, 320] } }]");
        const string Hole = "faces[0].holes[0]", Arc = "faces[0].openings[0].outline[3]", Column = "faces[0].openings[0].outline[0]", Range = "faces[0].openings[0].range";
        return
        [
            .. Each(hole, Hole + ".diameter", "0", "-80", "4000", "5000", "'80 mn'"), .. Each(hole, Hole + ".clearance", "-5", "101"), .. Each(rugHole, Hole + ".diameter", "380", "500", "1000"),
            .. Each(arc, Arc + ".through", "[800, 800]", "[600, 800]", "[1000, 800]", "[800, 800.01]"), .. Each(column, Column + ".through", "[800, 800]", "[600, 800]", "[800, 800.001]"),
            .. Each(range, Range + ".left", "[610, 700]", "[500, 590]", "[700, 580]", "[500, 700]", "[580, 800]"), .. Each(range, Range + ".studs", "[550, 800]", "[610, 950]", "[950, 550]"), .. Each(range, Range + ".width", "[310, 320]", "[320, 250]", "[250, 400]"),
        ];
    }

    /// <summary>Words and fields that are misspelt, said twice, or stand where they have no business.</summary>
    public static IEnumerable<Slip> WordsAndFields()
    {
        var aims = GoodJobs.Cut("'order': ['tiles', 'cuts']");
        var kerf = GoodJobs.Cut("'keep': 50");
        const string Kind = "faces[0].edges[0].kind";
        return
        [
            new(aims, "cutting.order", "['tiles', 'tiles']"), new(aims, "cutting.order", "['cuts', 'tiles', 'cuts', 'offcuts', 'tiles']"), new(aims, "cutting.order", "['tiles', 'laid by', 'cuts', 'courses', 'offcuts', 'courses']"),
            new(aims, "cutting.order[1]", "'tiles'"), new(aims, "cutting.order[1]", "'cutts'"),
            .. Each(kerf, "cutting.kerf", "2", "'1/16 in'"), new(kerf, "cutting", "{ 'kerf': 2 }"), .. Each(kerf, "cutting.kep", "60"), new(kerf, "cutting", "{ 'fense': 2 }"), new(GoodJobs.Herringbone, "kerf", "2"), new(GoodJobs.Herringbone, "products[0].kerff", "2"),
            .. Each(GoodJobs.Pinwheel, "runs[0].perBox", "12"), new(GoodJobs.Cut("'keep': 50", "'kerf': 2"), "cutting.kerf", "3"),
            .. Each(aims, Kind, "'wall'", "'a wall'", "'inside'", "'corner'", "'open'", "'flor'", "'tub'", "'door'"),
        ];
    }

    private static IEnumerable<Slip> Each(string job, string path, params string[] values) => values.Select(value => new Slip(job, path, value));
}
