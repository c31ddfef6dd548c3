namespace Gaugerod.Files.Tests.Jobs;

/// <summary>One slip in a sample, one message: the place, what stands there, what could, and the nearest that would do.</summary>
public class BadJobTests
{
    [Theory]
    [InlineData("\"foot\": 2400", "\"fot\": 2400", "job.json:14: faces[0].readings.width.fot: found an unknown field \"fot\", expected \"foot\", \"middle\" or \"top\". Nearest: \"foot\".")]
    [InlineData("\"joint\": 3,", "\"joint\": 3, \"kerf\": 2,", "job.json:25: runs[0].kerf: found an unknown field \"kerf\", expected \"name\", \"product\", \"faces\", \"bond\", \"corners\", \"joint\", \"through\", \"limits\", \"wants\", \"order\", \"place\", \"set\", \"setting\" or \"movement\". Nearest: \"kerf\" of products[0].")]
    [InlineData("\"foot\": 2400", "\"foot\": 2400, \"foot\": 2500", "job.json:14: faces[0].readings.width.foot: found this field a second time, the first is in line 14, expected every field once.")]
    [InlineData("\"foot\": 2400", "\"foot\": null", "job.json:14: faces[0].readings.width.foot: found nothing, expected a length such as 1028.")]
    [InlineData("\"foot\": 2400", "\"foot\": \"3' 14\\\"\"", "job.json:14: faces[0].readings.width.foot: found \"3' 14\\\"\", expected less than 12 in after the ft. Nearest: 4' 2\".")]
    [InlineData("\"foot\": 2400", "\"foot\": \"1,028\"", "job.json:14: faces[0].readings.width.foot: found \"1,028\", expected 1,028 written so that its comma can be read one way only. Nearest: 1.028 mm or 1028 mm.")]
    [InlineData("\"foot\": 2400", "\"foot\": [2400]", "job.json:14: faces[0].readings.width.foot: found a list of 1, expected a length such as 1028.")]
    [InlineData("\"foot\": 2400", "\"foot\": 0", "job.json:14: faces[0].readings.width.foot: found 0, expected a size of more than 0, at most 100 m.")]
    [InlineData("\"joint\": 3,", "\"joint\": -3,", "job.json:25: runs[0].joint: found -3, expected a joint from 0 to 25 mm. Nearest: 3 mm.")]
    [InlineData("\"joint\": 3,", "\"joint\": 300,", "job.json:25: runs[0].joint: found 300, expected a joint from 0 to 25 mm. Nearest: 25 mm.")]
    [InlineData("\"edgeJoint\": 3", "\"edgeJoint\": 26", "job.json:6: edgeJoint: found 26, expected a joint from 0 to 25 mm. Nearest: 25 mm.")]
    [InlineData("\"product\": \"tile\",", "", "job.json:20: runs[0].product: found nothing, expected a product's name.")]
    [InlineData("\"product\": \"tile\"", "\"product\": \"tiel\"", "job.json:22: runs[0].product: found \"tiel\", expected a product of this job: \"tile\". Nearest: \"tile\".")]
    [InlineData("\"faces\": [\"wall\"]", "\"faces\": [\"walls\"]", "job.json:23: runs[0].faces[0]: found \"walls\", expected a face of this job: \"wall\". Nearest: \"wall\".")]
    [InlineData("\"faces\": [\"wall\"]", "\"faces\": [\"wall\", \"wall\"]", "job.json:23: runs[0].faces[1]: found \"wall\" a second time, expected every face once in a run.")]
    [InlineData("\"faces\": [\"wall\"]", "\"faces\": [\"wall\"], \"through\": \"well\"", "job.json:23: runs[0].through: found \"well\", expected a face of this run: \"wall\". Nearest: \"wall\".")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"gird\"", "job.json:24: runs[0].bond.kind: found \"gird\", expected \"grid\", \"running\", \"herringbone\", \"basketweave\", \"pinwheel\", \"windmill\", \"hexagon\", \"octagon\", \"chevron\", \"modular\", \"planks\" or \"mosaic\". Nearest: \"grid\".")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"running\", \"offset\": \"3/2\"", "job.json:24: runs[0].bond.offset: found \"3/2\", expected a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\". Nearest: \"1/2\".")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"running\", \"offset\": \"33%\"", "job.json:24: runs[0].bond.offset: found \"33%\", expected a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\". Nearest: \"1/3\".")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"running\", \"offset\": \"3/3\"", "job.json:24: runs[0].bond.offset: found \"3/3\", expected a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\". Nearest: { \"kind\": \"grid\" } for joints one above the other.")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"running\", \"offset\": \"50/150\"", "job.json:24: runs[0].bond.offset: found \"50/150\", expected a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\". Nearest: \"1/3\".")]
    [InlineData("\"units\": \"mm\"", "\"units\": \"mn\"", "job.json:5: units: found \"mn\", expected \"in\" or \"mm\". Nearest: \"mm\".")]
    [InlineData("\"foot\": 2400", "\"foot\": 198.19799999999998", "job.json:14: faces[0].readings.width.foot: found 198.19799999999998, expected at most 12 figures after the point. Nearest: 198.198.")]
    [InlineData("\"joint\": 3,", "\"joint\": \"2 1/2\",", "job.json:25: runs[0].joint: found \"2 1/2\", read as inches: 63.5 mm, expected a joint from 0 to 25 mm. Nearest: 2.5 mm.")]
    [InlineData("\"joint\": 3,", "\"joint\": { \"least\": 4, \"wanted\": 3 },", "job.json:25: runs[0].joint: found a wanted joint under the least, expected least, wanted and most, each no smaller than the one before. Nearest: { \"least\": \"3 mm\", \"wanted\": \"3 mm\", \"most\": \"4 mm\" }.")]
    [InlineData("\"readings\": {", "\"outline\": [], \"readings\": {", "job.json:11: faces[0]: found both \"outline\" and \"readings\", expected one of them. Nearest: \"readings\" for a wall with four sides, \"survey\" where more was read, \"outline\" for any other shape.")]
    [InlineData("\"perBox\": 10", "\"perBox\": 0", "job.json:8: products[0].perBox: found 0, expected a whole number from 1 to 100000. Nearest: 1.")]
    [InlineData("\"perBox\": 10", "\"perBox\": \"10\"", "job.json:8: products[0].perBox: found \"10\", expected a whole number from 1 to 100000. Nearest: 10.")]
    [InlineData("\"perBox\": 10", "\"perBox\": 10, \"kerf\": 11", "job.json:8: products[0].kerf: found 11, expected a kerf from 0 to 10 mm. Nearest: 10 mm.")]
    [InlineData("\"width\": 300", "\"width\": 4.9", "job.json:8: products[0].width: found 4.9, expected a tile's side from 5 mm to 4 m. Nearest: 5 mm.")]
    [InlineData("\"width\": 300", "\"width\": \"4001 mm\"", "job.json:8: products[0].width: found \"4001 mm\", expected a tile's side from 5 mm to 4 m. Nearest: 4000 mm.")]
    [InlineData("{ \"name\": \"tile\",", "{ \"name\": \" \",", "job.json:8: products[0].name: found \" \", expected a name of 1 to 60 printable characters.")]
    [InlineData("{ \"name\": \"tile\",", "{ \"name\": \"tile \",", "job.json:8: products[0].name: found \"tile \", expected a name without blanks before or after it. Nearest: \"tile\".")]
    [InlineData("\"units\": \"mm\"", "\"units\": \"inch\"", "job.json:5: units: found \"inch\", expected \"in\" or \"mm\". Nearest: \"in\".")]
    [InlineData("gaugerod-job/1", "gaugerod-job/2", "job.json:2: format: found \"gaugerod-job/2\", expected \"gaugerod-job/1\", the only version that is read here.")]
    [InlineData("gaugerod-job/1", "gaugerod-plan/1", "job.json:2: format: found \"gaugerod-plan/1\", expected \"gaugerod-job/1\". Nearest: the job that this plan was made from.")]
    [InlineData("{ \"kind\": \"grid\" }", "\"grid\"", "job.json:24: runs[0].bond: found \"grid\", expected a group { }. Nearest: { \"kind\": \"grid\" }.")]
    [InlineData("\"readings\": {", "\"holes\": {", "job.json:11: faces[0]: found neither \"outline\", \"readings\" nor \"survey\", expected one of them.")]
    [InlineData("{ \"name\": \"tile\",", "{ \"name\": \"\\u202E\",", "job.json:8: products[0].name: found \"\\u202E\", expected a name of 1 to 60 printable characters.")]
    public void A_slip_in_the_plain_wall(string old, string changed, string message) => Assert.Equal([message], Samples.Messages(Samples.With("plain-wall", old, changed)));

    [Theory]
    [InlineData("{ \"name\": \"right\", \"kind\": \"inside corner\" },", "", "job.json:25: faces[0].edges: found 3 edges, expected one for each of the outline's 4 sides.")]
    [InlineData("[0, 0], [1486, 4], [1486, 1204], [0, 1204]", "[0, 0], [0, 1204], [1486, 1204], [1486, 4]", "job.json:24: faces[0].outline: found corners that run clockwise, expected corners counter-clockwise as seen from the room. Nearest: the same corners and edges in the opposite order.")]
    [InlineData("[0, 0], [1486, 4], [1486, 1204], [0, 1204]", "[0, 0], [1486, 4]", "job.json:24: faces[0].outline: found 2 corners, expected an outline of 3 to 1000 corners.")]
    [InlineData("[0, 1204]]", "[0, 1204], [0, 0]]", "job.json:24: faces[0].outline[4]: found the first corner a second time, expected every corner once; the last side runs back to the first by itself. Nearest: leave this corner out.")]
    [InlineData("{ \"name\": \"hatch\", \"left\": 1040, \"bottom\": 420, \"width\": 250, \"height\": 300 }", "{}", "job.json:32: faces[0].openings[0]: found an empty group { }, expected a group with at least \"name\", \"left\", \"bottom\", \"width\" and \"height\".")]
    [InlineData("\"left\": 1040, \"bottom\": 420, \"width\": 250, \"height\": 300", "\"outline\": [[1, 1], [2, 1], [2, 2]], \"left\": 1040, \"bottom\": 420, \"width\": 250, \"height\": 300", "job.json:32: faces[0].openings[0]: found both \"outline\" and \"left\", \"bottom\", \"width\" and \"height\", expected one of them. Nearest: \"left\", \"bottom\", \"width\" and \"height\" for an upright rectangle, \"outline\" for any other shape.")]
    [InlineData("{ \"name\": \"waste\", \"x\": 620, \"y\": 530, \"diameter\": 40, \"clearance\": 4 }", "{ \"want\": \"joint\", \"face\": \"basin wall\", \"must\": true, \"on\": 1 }", "job.json:35: faces[0].holes[0]: found a group of other fields: \"want\", \"face\", \"must\" and more, expected a group with at least \"name\" and \"diameter\".")]
    [InlineData("\"kind\": \"free\", \"trim\"", "\"kind\": \"freee standing\", \"trim\"", "job.json:28: faces[0].edges[2].kind: found \"freee standing\", expected \"inside corner\", \"outside corner\", \"free\", \"floor\", \"ceiling\", \"fixture\" or \"threshold\". Nearest: \"free\".")]
    [InlineData("\"want\": \"full course\", \"face\": \"basin wall\", \"edge\": \"top\"", "\"want\": \"at least\", \"part\": \"3/3\", \"face\": \"basin wall\", \"edge\": \"top\"", "job.json:48: runs[0].wants[0].part: found \"3/3\", expected a part of a tile, less than a whole one and no finer than 1/64, such as \"1/2\" or \"1/3\". Nearest: a want of a \"full course\" along the edge.")]
    [InlineData("[1486, 4]", "[1486]", "job.json:24: faces[0].outline[1]: found a list of 1, expected a corner [x, y]: so far from the left, so far up.")]
    [InlineData("\"kind\": \"floor\"", "\"kind\": \"flor\"", "job.json:26: faces[0].edges[0].kind: found \"flor\", expected \"inside corner\", \"outside corner\", \"free\", \"floor\", \"ceiling\", \"fixture\" or \"threshold\". Nearest: \"floor\".")]
    [InlineData("\"kind\": \"floor\"", "\"kind\": \"outside corner\"", "job.json:26: faces[0].edges[0].finish: found nothing, expected \"bullnose over\", \"bullnose under\", \"mitre\" or \"profile\", which an outside corner needs.")]
    [InlineData("\"kind\": \"free\", \"trim\"", "\"kind\": \"free\", \"lap\": \"laps\", \"trim\"", "job.json:28: faces[0].edges[2].lap: found \"lap\" at an edge of kind \"free\", expected it only at kind \"inside corner\". Nearest: leave it out, or change the kind.")]
    [InlineData("\"width\": 250,", "\"width\": -250,", "job.json:32: faces[0].openings[0].width: found -250, expected a size of more than 0, at most 100 m. Nearest: 250 mm.")]
    [InlineData("\"diameter\": 40,", "\"diameter\": 0,", "job.json:35: faces[0].holes[0].diameter: found 0, expected a diameter of more than 0, at most 4 m.")]
    [InlineData("{ \"name\": \"tap\"", "{ \"name\": \"waste\"", "job.json:36: faces[0].holes[1].name: found \"waste\", which is taken, expected a name of its own among the face's edges, fixtures, openings and holes. Nearest: \"waste 2\".")]
    [InlineData("\"opening\": \"hatch\"", "\"opening\": \"hacth\"", "job.json:50: runs[0].wants[2].opening: found \"hacth\", expected an opening of basin wall: \"hatch\". Nearest: \"hatch\".")]
    [InlineData("\"want\": \"full course\"", "\"want\": \"full corse\"", "job.json:48: runs[0].wants[0].want: found \"full corse\", expected \"joint\", \"at least\", \"centred\", \"hole\", \"in line\", \"equal\" or \"full course\". Nearest: \"full course\".")]
    [InlineData("\"must\": true }", "\"must\": true, \"weight\": 2 }", "job.json:48: runs[0].wants[0].weight: found a weight on a must, expected a must, which counts before all wishes, or a wish with a weight. Nearest: leave \"weight\" out.")]
    [InlineData("{ \"edge\": \"right\" }", "{ \"edge\": \"left\" }", "job.json:49: runs[0].wants[1].and: found the same edge twice, expected two edges.")]
    public void A_slip_in_the_cloakroom(string old, string changed, string message) => Assert.Equal([message], Samples.Messages(Samples.With("cloakroom", old, changed)));

    [Theory]
    [InlineData("\"perBox\": 18", "\"per_box\": 18", "products[0].per_box", "\"perBox\"")]
    [InlineData("\"niche.bottom\"", "\"niche.botom\"", "runs[0].wants[1].edge", "\"niche.bottom\"")]
    [InlineData("\"wanted\": \"1/8\"", "\"wanted\": \"3\"", "runs[0].joint.wanted", "15/16 in")]
    [InlineData("\"least\": \"1/16\"", "\"least\": \"1/4\"", "runs[0].joint", "{ \"least\": \"1/8 in\", \"wanted\": \"3/16 in\", \"most\": \"1/4 in\" }")]
    [InlineData("\"width\": \"11 15/16\"", "\"width\": \"1/8\"", "products[0].width", "1/4 in")]
    [InlineData("\"faces\": [\"west\", \"north\", \"east\"]", "\"faces\": [\"west\", \"norht\", \"east\"]", "runs[0].faces[1]", "\"north\"")]
    [InlineData("\"from\": \"45\"", "\"from\": \"45\", \"to\": \"44\"", "faces[1].fixtures[1].to", null)]
    [InlineData("\"heightLeft\": \"18 1/8\", ", "", "faces[1].fixtures[1].heightLeft", null)]
    [InlineData("\"edge\": \"niche.bottom\"", "\"edge\": \"niche.bottom\", \"height\": \"40\"", "runs[0].wants[1]", null)]
    [InlineData("\"name\": \"north\",", "\"name\": \"north\", \"outline\": [],", "faces[1]", "\"readings\" for a wall with four sides, \"survey\" where more was read, \"outline\" for any other shape")]
    public void A_slip_in_the_guest_shower(string old, string changed, string path, string? nearest)
    {
        var fault = Samples.Faults(Samples.With("guest-shower", old, changed))[0];
        Assert.Equal((path, nearest), (fault.Path, fault.Nearest));
    }

    [Fact]
    public void A_face_that_two_runs_tile_is_refused_at_the_second()
    {
        var run = "\"name\": \"again\", \"product\": \"tile\", \"faces\": [\"wall\"], \"bond\": { \"kind\": \"grid\" }, \"joint\": 3";
        var fault = Assert.Single(Samples.Faults(Samples.With("plain-wall", "\"runs\": [", $"\"runs\": [ {{ {run} }},")));
        Assert.Equal(("runs[1].faces[0]", "\"wall\", which another run tiles"), (fault.Path, fault.Found));
    }

    [Fact]
    public void Limits_are_said_in_the_jobs_unit()
    {
        Assert.EndsWith("found \"3\", expected a joint from 0 to 15/16 in. Nearest: 15/16 in.", Samples.Messages(Samples.With("guest-shower", "\"wanted\": \"1/8\"", "\"wanted\": \"3\""))[0], StringComparison.Ordinal);
        Assert.EndsWith("found \"1/8\", expected a tile's side from 1/4 in to 13' 1 7/16\". Nearest: 1/4 in.", Samples.Messages(Samples.With("guest-shower", "\"width\": \"11 15/16\"", "\"width\": \"1/8\""))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_text_is_called_so() =>
        Assert.Equal(["job.json:1: found a file that is no text, expected a job, saved as text in UTF-8."], Samples.Messages("PK\u0003\u0004\0\0"));
}
