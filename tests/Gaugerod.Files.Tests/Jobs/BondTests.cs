using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Tests.Schemas;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Bonds and zones as a file says them, and what is said of those that cannot be read. The schema must judge each alike.</summary>
public class BondTests
{
    private const string Grid = "{ \"kind\": \"grid\" }";

    public static TheoryData<string, BondRequest> Read => new()
    {
        { "{ 'kind': 'herringbone', 'abreast': 2, 'turned': 45 }", new BondRequest.Herringbone(2) { Turn = Angle.FromThousandths(45_000) } },
        { "{ 'kind': 'herringbone' }", new BondRequest.Herringbone(1) },
        { "{ 'kind': 'basketweave', 'turned': -12.5 }", new BondRequest.Basketweave() { Turn = Angle.FromThousandths(-12_500) } },
        { "{ 'kind': 'pinwheel', 'small': 'dot' }", new BondRequest.Pinwheel() { With = ["dot"] } },
        { "{ 'kind': 'windmill', 'square': 'dot' }", new BondRequest.Windmill() { With = ["dot"] } },
        { "{ 'kind': 'hexagon' }", new BondRequest.Hexagon(true, null) },
        { "{ 'kind': 'hexagon', 'up': 'flat', 'point': 30 }", new BondRequest.Hexagon(false, Length.FromMillimetres(30)) },
        { "{ 'kind': 'octagon', 'square': 'dot', 'corner': 58 }", new BondRequest.Octagon(Length.FromMillimetres(58)) { With = ["dot"] } },
        { "{ 'kind': 'chevron', 'slope': 30 }", new BondRequest.Chevron(Angle.FromThousandths(30_000)) },
        { "{ 'kind': 'chevron', 'slope': 45, 'down': 'dot' }", new BondRequest.Chevron(Angle.FromThousandths(45_000)) { With = ["dot"] } },
        { "{ 'kind': 'modular', 'with': ['dot', 'dot', 'dot'] }", new BondRequest.Modular() { With = ["dot", "dot", "dot"] } },
        { "{ 'kind': 'planks', 'stagger': 30, 'start': 'hall', 'with': ['dot'] }", new BondRequest.Planks(Length.FromMillimetres(30), "hall") { With = ["dot"] } },
        { "{ 'kind': 'mosaic', 'across': 12, 'high': 11 }", new BondRequest.Mosaic(12, 11) },
        { "{ 'kind': 'running', 'offset': '1/3', 'step': 'back and forth', 'turned': 90 }", new BondRequest.Running(Lay.Level, 1, 3, Stepping.BackAndForth) { Turn = Angle.FromThousandths(90_000) } },
    };

    public static TheoryData<string, string, string?> Refused => new()
    {
        { "{ 'kind': 'heringbone' }", "runs[0].bond.kind", "\"herringbone\"" },
        { "{ 'abreast': 2 }", "runs[0].bond.kind", null },
        { "'herringbone'", "runs[0].bond", "{ \"kind\": \"herringbone\" }" },
        { "{ 'kind': 'herringbone', 'abreast': 5 }", "runs[0].bond.abreast", null },
        { "{ 'kind': 'herringbone', 'turned': 361 }", "runs[0].bond.turned", null },
        { "{ 'kind': 'herringbone', 'turned': '45 degrees' }", "runs[0].bond.turned", null },
        { "{ 'kind': 'pinwheel' }", "runs[0].bond.small", null },
        { "{ 'kind': 'octagon' }", "runs[0].bond.square", null },
        { "{ 'kind': 'hexagon', 'up': 'flats' }", "runs[0].bond.up", "\"flat\"" },
        { "{ 'kind': 'chevron' }", "runs[0].bond.slope", null },
        { "{ 'kind': 'chevron', 'slope': 400 }", "runs[0].bond.slope", "360" },
        { "{ 'kind': 'modular', 'with': ['dot', 'dot'] }", "runs[0].bond.with", null },
        { "{ 'kind': 'planks', 'start': 'hall' }", "runs[0].bond.stagger", null },
        { "{ 'kind': 'planks', 'stagger': 30 }", "runs[0].bond.start", null },
        { "{ 'kind': 'mosaic', 'across': 12 }", "runs[0].bond.high", null },
        { "{ 'kind': 'mosaic', 'across': 0, 'high': 12 }", "runs[0].bond.across", null },
        { "{ 'kind': 'basketweave', 'abreast': 2 }", "runs[0].bond.abreast", null },
    };

    [Theory]
    [MemberData(nameof(Read))]
    public void A_bond_arrives_as_what_it_says(string said, BondRequest bond)
    {
        var text = With(said);
        Assert.Equal(bond, Assert.IsType<Files.Jobs.JobReading.Understood>(Samples.Read(text)).Job.Runs[0].Bond);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, text));
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_bond_that_cannot_be_is_refused_where_it_goes_wrong_and_by_the_schema_too(string said, string path, string? nearest)
    {
        var text = With(said);
        var fault = Samples.Faults(text)[0];
        Assert.Equal(path, fault.Path);
        if (nearest is not null) Assert.Equal(nearest, fault.Nearest);
        Assert.NotEmpty(SchemaTests.Faults(SchemaTests.JobSchema, text));
    }

    [Fact]
    public void A_product_that_a_bond_names_must_be_there()
    {
        var fault = Assert.Single(Samples.Faults(With("{ 'kind': 'pinwheel', 'small': 'dott' }")));
        Assert.Equal(("runs[0].bond.small", "\"dott\"", "\"dot\""), (fault.Path, fault.Found, fault.Nearest));
    }

    [Fact]
    public void Zones_arrive_as_what_they_say()
    {
        var text = WithZones("{ 'kind': 'border', 'name': 'frame', 'width': 100, 'joint': 2, 'corners': 'butt' }, { 'kind': 'rug', 'name': 'rug', 'left': 300, 'bottom': 200, 'width': 500, 'height': 400 }, { 'kind': 'band', 'name': 'dado', 'from': 900, 'to': 1000 }, { 'kind': 'band', 'name': 'upper', 'from': 1000 }");
        var mm = Length.FromMillimetres;
        var face = Assert.IsType<Files.Jobs.JobReading.Understood>(Samples.Read(text)).Job.Faces[0];
        Assert.Equal(
            [
                new Zone.Border("frame", mm(100), Mitred: false) { Joint = mm(2) }, new Zone.Rug("rug", new Box(mm(300), mm(200), mm(800), mm(600))),
                new Zone.Strip("dado", mm(900), mm(1000)), new Zone.Strip("upper", mm(1000), null),
            ],
            face.Zones);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, text));
    }

    [Theory]
    [InlineData("{ 'kind': 'boarder', 'name': 'frame', 'width': 100 }", "faces[0].zones[0].kind", "\"border\"")]
    [InlineData("{ 'name': 'frame', 'width': 100 }", "faces[0].zones[0].kind", null)]
    [InlineData("{ 'kind': 'border', 'name': 'frame' }", "faces[0].zones[0].width", null)]
    [InlineData("{ 'kind': 'border', 'width': 100 }", "faces[0].zones[0].name", null)]
    [InlineData("{ 'kind': 'border', 'name': 'frame', 'width': 100, 'corners': 'mitre' }", "faces[0].zones[0].corners", "\"mitred\"")]
    [InlineData("{ 'kind': 'rug', 'name': 'rug', 'left': 300, 'bottom': 200, 'width': 500 }", "faces[0].zones[0].height", null)]
    [InlineData("{ 'kind': 'band', 'name': 'dado', 'to': 900 }", "faces[0].zones[0].from", null)]
    public void A_zone_that_cannot_be_is_refused_where_it_goes_wrong_and_by_the_schema_too(string said, string path, string? nearest)
    {
        var text = WithZones(said);
        var fault = Samples.Faults(text)[0];
        Assert.Equal(path, fault.Path);
        if (nearest is not null) Assert.Equal(nearest, fault.Nearest);
        Assert.NotEmpty(SchemaTests.Faults(SchemaTests.JobSchema, text));
    }

    [Fact]
    public void A_zone_may_not_take_its_faces_name() =>
        Assert.Equal("faces[0].zones[0].name", Samples.Faults(WithZones("{ 'kind': 'border', 'name': 'wall', 'width': 100 }"))[0].Path);

    private static string With(string bond) =>
        Samples.With("plain-wall", Grid, bond.Replace('\'', '"')).Replace("\"products\": [", "\"products\": [ { \"name\": \"dot\", \"width\": 50, \"height\": 50 },", StringComparison.Ordinal);

    private static string WithZones(string zones) =>
        Samples.Text("plain-wall").Replace("\"name\": \"wall\",\n      \"readings\"", $"\"name\": \"wall\",\n      \"zones\": [{zones.Replace('\'', '"')}],\n      \"readings\"", StringComparison.Ordinal);
}
