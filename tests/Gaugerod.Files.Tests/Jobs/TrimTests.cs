using System.Text;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Trims of a job: read, refused, planned and written. The job is invented.</summary>
public sealed class TrimTests
{
    private const string Job = """
        { "format": "gaugerod-job/1", "name": "Wainscot", "note": "An invented job.", "units": "in",
          "products": [{ "name": "tile", "width": "8 7/8", "height": "8 7/8" }],
          "trims": [
            { "name": "bullnose", "kind": "bullnose", "length": "11 7/8", "width": "3", "joint": "1/8", "least": "2", "thickness": "3/8" },
            { "name": "liner", "kind": "liner", "length": "11 7/8", "width": "1", "joint": "1/8" }
          ],
          "faces": [
            { "name": "north", "readings": { "width": { "foot": "97" }, "height": { "left": "48" } },
              "edges": { "head": { "kind": "free", "trim": { "of": "bullnose", "joints": "staggered" } }, "right": { "kind": "outside corner", "finish": "mitre" } },
              "zones": [
                { "kind": "band", "name": "liner band", "from": "30", "trim": { "of": "liner", "joints": "centred" } },
                { "kind": "band", "name": "upper", "from": "31 1/8" }
              ] },
            { "name": "east", "readings": { "width": { "foot": "40" }, "height": { "left": "48" } },
              "edges": { "head": { "kind": "free", "trim": { "of": "bullnose", "stagger": "1" } }, "left": { "kind": "outside corner", "finish": "mitre" } } }
          ],
          "runs": [
            { "name": "lower", "product": "tile", "faces": ["north", "east"], "bond": { "kind": "grid" }, "joint": "1/8" },
            { "name": "upper", "product": "tile", "faces": ["upper"], "bond": { "kind": "running", "offset": "1/2" }, "joint": "1/8" }
          ] }
        """;

    [Fact]
    public void A_trim_at_an_edge_brings_its_width_and_what_is_asked_of_its_joints()
    {
        var job = Read(Job);
        Assert.Equal(["bullnose", "liner"], job.Trims.Select(trim => trim.Name));
        var north = Assert.IsType<FaceShape.Read>(job.Faces[0].Shape);
        Assert.Equal((Length.FromInches(3), new TrimRequest("bullnose", TrimJoints.Staggered)), (north.Head.Trim, north.Head.Trimmed));
        var east = Assert.IsType<FaceShape.Read>(job.Faces[1].Shape);
        Assert.Equal(new TrimRequest("bullnose", TrimJoints.Staggered) { Stagger = Length.FromInches(1) }, east.Head.Trimmed);
        // As high as the trim and its joint, the job's edge joint of 1/8.
        var band = Assert.IsType<Zone.Strip>(job.Faces[0].Zones[0]);
        Assert.Equal((Length.FromInches(31, 1, 8), new TrimRequest("liner", TrimJoints.Centred)), (band.To, band.Trimmed));
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Job));
    }

    [Fact]
    public void A_width_alone_stays_a_width()
    {
        var job = Read(Job.Replace("""{ "of": "bullnose", "stagger": "1" }""", "\"1/2\"", StringComparison.Ordinal));
        var east = Assert.IsType<FaceShape.Read>(job.Faces[1].Shape);
        Assert.Equal((Length.FromInches(0, 1, 2), (TrimRequest?)null), (east.Head.Trim, east.Head.Trimmed));
    }

    [Theory]
    [InlineData("\"of\": \"bullnose\", \"joints\"", "\"of\": \"bulnose\", \"joints\"", "found \"bulnose\", expected a trim of this job: \"bullnose\" or \"liner\". Nearest: \"bullnose\".")]
    [InlineData("\"joints\": \"staggered\"", "\"joints\": \"stagered\"", "Nearest: \"staggered\".")]
    [InlineData("\"joints\": \"staggered\"", "\"joints\": \"in line\", \"stagger\": \"2\"", "found a stagger with joints \"in line\", expected it only with joints that are \"staggered\", \"repeating\" or \"centred\".")]
    [InlineData("\"least\": \"2\"", "\"least\": \"13\"", "expected no more than the trim's length, 11 7/8 in. Nearest: 11 7/8 in.")]
    [InlineData("\"kind\": \"bullnose\"", "\"kind\": \"bulnose\"", "Nearest: \"bullnose\".")]
    [InlineData("\"width\": \"3\"", "\"wdth\": \"3\"", "Nearest: \"width\".")]
    [InlineData("\"width\": \"3\", ", "", "trims[0].width: found nothing, expected a length such as \"2\".")]
    [InlineData("\"name\": \"liner\"", "\"name\": \"bullnose\"", "found \"bullnose\", which is taken, expected a name of its own among the trims.")]
    [InlineData("\"head\": { \"kind\": \"free\", \"trim\": { \"of\": \"bullnose\", \"joints\"", "\"head\": { \"kind\": \"ceiling\", \"trim\": { \"of\": \"bullnose\", \"joints\"", "found \"trim\" at an edge of kind \"ceiling\"")]
    [InlineData("\"right\": { \"kind\": \"outside corner\", \"finish\": \"mitre\" }", "\"right\": { \"kind\": \"outside corner\", \"finish\": \"bullnose over\", \"trim\": { \"of\": \"bullnose\" } }", "Nearest: leave it out, or say the finish \"profile\".")]
    public void What_cannot_be_meant_is_said_with_the_nearest_that_can(string old, string changed, string said)
    {
        Assert.Equal(2, Job.Split(old).Length);
        Assert.Contains(Samples.Messages(Job.Replace(old, changed, StringComparison.Ordinal)), message => message.Contains(said, StringComparison.Ordinal));
    }

    /// <summary>Sizes that no mark of the tape has; the last is one that has no mark of its own, 30.2 mm.</summary>
    [Theory]
    [InlineData("\"width\": \"3\"", "\"width\": \"30.2 mm\", \"outside\": \"10 mm\"", "trims[0].outside: ", "\"1 1/4\"")]
    [InlineData("\"length\": \"11 7/8\", \"width\": \"3\"", "\"length\": \"300.9 mm\", \"width\": \"3\"", "right.return: ", "\"11 13/16\"")]
    public void The_nearest_size_of_a_trim_is_one_that_is_taken(string old, string changed, string place, string nearest)
    {
        var returns = place.StartsWith("right", StringComparison.Ordinal);
        var text = Job.Replace(old, changed, StringComparison.Ordinal);
        if (returns) text = text.Replace("\"joints\": \"staggered\" }", "\"joints\": \"staggered\", \"right\": { \"return\": \"400 mm\" } }", StringComparison.Ordinal);
        var message = Assert.Single(Samples.Messages(text));
        Assert.Contains(place, message, StringComparison.Ordinal);
        Assert.Contains($"Nearest: {nearest.Trim('"')} in.", message, StringComparison.Ordinal);
        Read(text.Replace(returns ? "\"400 mm\"" : "\"10 mm\"", nearest, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"kind\": \"mitred edge\"", "expected none of an edge that is worked on the tiles. Nearest: leave it out.")]
    [InlineData("\"kind\": \"bullnose\", \"length\": \"60 mm\", \"width\": \"3\", \"thickness\": \"61 mm\", \"least\": \"1\"", "expected none of a trim that is no longer than it is thick. Nearest: leave it out.")]
    public void A_return_that_no_length_would_do_for_is_to_be_left_out(string trim, string said)
    {
        var text = Job.Replace("\"kind\": \"bullnose\", \"length\": \"11 7/8\", \"width\": \"3\", \"joint\": \"1/8\", \"least\": \"2\", \"thickness\": \"3/8\"", trim, StringComparison.Ordinal)
            .Replace("\"joints\": \"staggered\" }", "\"joints\": \"staggered\", \"right\": { \"return\": \"2\" } }", StringComparison.Ordinal);
        Assert.Contains(said, Assert.Single(Samples.Messages(text)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_says_every_line_and_is_valid_against_its_schema()
    {
        var text = Written(Job);
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, text));
        using var plan = JsonDocument.Parse(text);
        Assert.Equal(["north head", "north liner band", "east head"], plan.RootElement.GetProperty("trim").EnumerateArray().Select(line => $"{line.GetProperty("face")} {line.GetProperty("edge")}"));
        Assert.Equal(["tile", "bullnose", "liner"], plan.RootElement.GetProperty("takeoff").EnumerateArray().Select(order => order.GetProperty("item").GetString()));
        Assert.DoesNotContain(plan.RootElement.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("rule").GetString() is "bare-face" or "trim-corner");
    }

    [Fact]
    public void A_band_obeys_the_joints_of_the_field_below_and_of_the_field_above()
    {
        var plan = Planner.Plan(Read(Job));
        var band = plan.Trims.Lines.Single(line => line.Edge == "liner band");
        Assert.Equal(Plumb("north").Concat(Plumb("upper")).Order(), band.Beside.Select(at => band.From.X - at).Order());

        // The joints of a field's course that ends at the band, as its tiles have them.
        IEnumerable<Length> Plumb(string face)
        {
            var pieces = plan.Runs.SelectMany(run => run.Faces).Single(f => f.Face.Name == face).Pieces;
            var course = pieces.Where(piece => face == "north" ? piece.Outline.Bounds.Top == pieces.Max(p => p.Outline.Bounds.Top) : piece.Outline.Bounds.Bottom == pieces.Min(p => p.Outline.Bounds.Bottom)).OrderBy(piece => piece.Outline.Bounds.Left).ToList();
            return course.Zip(course.Skip(1), (one, next) => Length.FromSteps((one.Outline.Bounds.Right + next.Outline.Bounds.Left).Steps / 2));
        }
    }

    [Fact]
    public void Trims_of_two_walls_meet_on_the_outer_corner_in_mitres_that_take_their_thickness()
    {
        var plan = Planner.Plan(Read(Job));
        var (north, east) = (plan.Trims.Lines[0].Pieces[0], plan.Trims.Lines[2].Pieces[^1]);
        Assert.Equal((Engine.Trims.MitreHand.Right, Engine.Trims.MitreHand.Left), (north.Hand, east.Hand));
        Assert.Equal((Length.FromInches(0, 3, 8), Length.FromInches(0, 3, 8)), (north.MitreTakes, east.MitreTakes));
    }

    /// <summary>The frame of the north wall's head and the east wall's go on round the corner with one piece: 4 in along both, as high as the trim.</summary>
    [Fact]
    public void A_corner_piece_goes_round_the_corner_of_two_walls_and_is_bought_once()
    {
        var text = Job.Replace("\"thickness\": \"3/8\" }", "\"thickness\": \"3/8\", \"outside\": \"4\" }", StringComparison.Ordinal);
        var plan = Planner.Plan(Read(text));
        var (north, east) = (plan.Trims.Lines[0], plan.Trims.Lines[2]);
        Assert.Equal(north.AtBegin, east.AtEnd);
        var corner = Assert.Single(plan.Trims.Lines.SelectMany(line => line.CornerPieces).Distinct());
        Assert.Equal(["east", "north"], corner.Parts.Select(part => part.Face).Order());
        Assert.All(corner.Parts, part => Assert.Equal((Length.FromInches(4), Length.FromInches(3)), (part.Outline.Bounds.Width, part.Outline.Bounds.Height)));
        // A joint of 1/8 before both.
        Assert.Equal(Length.FromInches(0, 1, 8), corner.Parts.Single(part => part.Face == "north").Outline.Bounds.Left - north.Pieces[0].Outline.Bounds.Right);
        Assert.Equal(Length.FromInches(0, 1, 8), east.Pieces[^1].Outline.Bounds.Left - corner.Parts.Single(part => part.Face == "east").Outline.Bounds.Right);
        Assert.Equal(1, plan.Order.Single(line => line.Item == "bullnose, outside corner of walls").Need);
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Written(text)));
    }

    [Fact]
    public void Each_end_may_have_a_corner_and_a_return_of_its_own()
    {
        var text = Job.Replace("{ \"of\": \"bullnose\", \"stagger\": \"1\" }", "{ \"of\": \"bullnose\", \"stagger\": \"1\", \"corner\": \"covers\", \"left\": { \"corner\": \"mitred\" }, \"right\": { \"return\": \"3\" } }", StringComparison.Ordinal);
        var job = Read(text);
        var east = Assert.IsType<FaceShape.Read>(job.Faces[1].Shape);
        Assert.Equal((new TrimEnding(TrimCorner.Mitred), new TrimEnding(TrimCorner.Covers, Length.FromInches(3))), (east.Head.Trimmed!.Left, east.Head.Trimmed.Right));
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, text));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Written(text)));
        var turned = Assert.Single(Planner.Plan(job).Trims.Lines.SelectMany(line => line.Returns));
        Assert.Equal((Length.FromInches(3), false), (turned.Length, turned.AtLeft));
    }

    [Theory]
    [InlineData("\"return\": \"14\"", "\"return\": \"11 7/8\"", "found 14 in, expected no more than the trim's length, 11 7/8 in. Nearest: 11 7/8 in.")]
    [InlineData("\"return\": \"1/4\"", "\"return\": \"7/16\"", "found 1/4 in, expected more than the trim's thickness, 3/8 in, which its mitre takes. Nearest: 7/16 in.")]
    [InlineData("\"return\": \"3\" }, \"left\": { \"corner\": \"mitered\"", "\"return\": \"3\" }, \"left\": { \"corner\": \"mitred\"", "Nearest: \"mitred\".")]
    public void An_end_that_cannot_be_had_is_said_with_the_nearest_that_can_and_that_is_taken(string asked, string nearest, string said)
    {
        var text = Job.Replace("{ \"of\": \"bullnose\", \"stagger\": \"1\" }", "{ \"of\": \"bullnose\", \"right\": { " + asked + " } }", StringComparison.Ordinal);
        Assert.Contains(Samples.Messages(text), message => message.Contains(said, StringComparison.Ordinal));
        Read(text.Replace(asked, nearest, StringComparison.Ordinal));
    }

    [Fact]
    public void A_corner_piece_that_leaves_a_hole_in_the_corner_is_said_with_the_nearest_that_does_not()
    {
        var text = Job.Replace("\"thickness\": \"3/8\" }", "\"thickness\": \"3/8\", \"outside\": \"2\" }", StringComparison.Ordinal);
        Assert.Contains(Samples.Messages(text), message => message.Contains("found 2 in, expected at least the trim's width, 3 in. Nearest: 3 in.", StringComparison.Ordinal));
        Read(text.Replace("\"outside\": \"2\"", "\"outside\": \"3\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Trims_that_meet_at_two_heights_are_told_of()
    {
        var lower = Job.Replace("\"foot\": \"40\" }, \"height\": { \"left\": \"48\" }", "\"foot\": \"40\" }, \"height\": { \"left\": \"47\" }", StringComparison.Ordinal);
        var finding = Assert.Single(Planner.Plan(Read(lower)).Findings, finding => finding.Rule == "trim-corner");
        Assert.Equal(("The trims meet at the corner 1 in apart in height.", "1 in"), (finding.Text, finding.Value));
    }

    [Fact]
    public void A_stagger_that_cannot_be_kept_is_said_with_the_greatest_that_can_and_that_is_planned()
    {
        // Joints 9 in apart: nothing stands further than 4 1/2 in from both.
        var plan = Planner.Plan(Read(Job.Replace("\"stagger\": \"1\"", "\"stagger\": \"6\"", StringComparison.Ordinal)));
        var finding = Assert.Single(plan.Findings, finding => finding.Rule == "trim-joints" && finding.Level == Engine.FindingLevel.Warn);
        Assert.StartsWith("No arrangement keeps every joint 6 in from those of the field; the greatest that can be had is 4 1/2 in, at the joint ", finding.Text, StringComparison.Ordinal);
        Assert.Equal(Length.FromInches(4, 1, 2), plan.Trims.Lines[2].Ways[0].Stagger);
    }

    [Fact]
    public void Joints_that_cannot_repeat_stagger_and_none_stands_so_near_that_it_looks_like_a_slip()
    {
        // Up the left side stand cut courses, a band and courses of another run: nothing repeats.
        var plan = Planner.Plan(Read(Job.Replace("\"edges\": { \"head\": { \"kind\": \"free\", \"trim\": { \"of\": \"bullnose\", \"joints\"", "\"edges\": { \"left\": { \"kind\": \"free\", \"trim\": { \"of\": \"bullnose\", \"joints\": \"repeating\" } }, \"head\": { \"kind\": \"free\", \"trim\": { \"of\": \"bullnose\", \"joints\"", StringComparison.Ordinal)));
        var line = plan.Trims.Lines.Single(trim => trim.Edge == "left");
        Assert.Equal((TrimJoints.Repeating, TrimJoints.Staggered), (line.Joints, line.Ways[0].Joints));
        Assert.True(line.Ways[0].Stagger >= Length.FromInches(0, 1, 2));
    }

    [Fact]
    public void A_line_that_its_least_piece_does_not_allow_is_said_with_what_can_be_had()
    {
        // 13 in of field less the corner: more than one piece and less than two of 8 in.
        var plan = Planner.Plan(Read(Job.Replace("\"foot\": \"40\"", "\"foot\": \"14\"", StringComparison.Ordinal).Replace("\"least\": \"2\"", "\"least\": \"8\"", StringComparison.Ordinal)));
        var finding = Assert.Single(plan.Findings, finding => finding.Rule == "trim-piece");
        Assert.Contains("cannot be made of pieces from 8 in to 11 7/8 in; the longest shortest piece that can be had is 6 ", finding.Text, StringComparison.Ordinal);
        Assert.Equal(2, plan.Trims.Lines[2].Pieces.Count);
    }

    [Fact]
    public void A_bar_on_an_outer_corner_that_both_edges_name_is_one_bar()
    {
        var barred = Job.Replace("\"finish\": \"mitre\"", "\"finish\": \"profile\", \"trim\": { \"of\": \"bar\", \"joints\": \"none\" }", StringComparison.Ordinal)
            .Replace("\"trims\": [", "\"trims\": [{ \"name\": \"bar\", \"kind\": \"profile\", \"length\": \"96\", \"width\": \"1/2\" },", StringComparison.Ordinal);
        var plan = Planner.Plan(Read(barred));
        Assert.Equal("north right", string.Join(", ", plan.Trims.Lines.Where(line => line.Product == "bar").Select(line => $"{line.Face} {line.Edge}")));
        Assert.Equal(1, plan.Trims.Stocks.Single(stock => stock.Product == "bar").Bought);
    }

    [Fact]
    public void An_edge_that_is_eased_lists_the_tiles_that_end_at_it_and_buys_nothing()
    {
        var eased = Job.Replace("{ \"of\": \"bullnose\", \"stagger\": \"1\" }", "{ \"of\": \"eased\" }", StringComparison.Ordinal)
            .Replace("\"trims\": [", "\"trims\": [{ \"name\": \"eased\", \"kind\": \"eased edge\" },", StringComparison.Ordinal);
        var plan = Planner.Plan(Read(eased));
        var line = plan.Trims.Lines.Single(trim => trim.Product == "eased");
        var east = plan.Runs[0].Faces[1].Pieces;
        var top = east.Where(piece => piece.Outline.Bounds.Top == east.Max(p => p.Outline.Bounds.Top)).OrderByDescending(piece => piece.Outline.Bounds.Left).Select(piece => piece.Id);
        Assert.Equal(top, line.Pieces.Select(piece => piece.Id));
        Assert.Equal(["bullnose", "liner"], plan.Trims.Stocks.Select(stock => stock.Product));
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, eased));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Written(eased)));
    }

    /// <summary>A liner of 1 in with joints of 1/8 fits a band from 30 to 31 1/8 in, to the middles of its joints.</summary>
    [Theory]
    [InlineData("\"33\"")]
    [InlineData("\"30 3/4\"")]
    public void A_band_that_is_not_as_high_as_its_trim_is_told_the_height_that_is_and_with_that_nothing_is_said(string to)
    {
        var wrong = Job.Replace("\"from\": \"30\", ", $"\"from\": \"30\", \"to\": {to}, ", StringComparison.Ordinal).Replace("\"from\": \"31 1/8\"", $"\"from\": {to}", StringComparison.Ordinal);
        var finding = Assert.Single(Planner.Plan(Read(wrong)).Findings, finding => finding.Rule == "trim-band");
        Assert.EndsWith("and liner is 1 in wide. Nearest: \"to\" 31 1/8 in, and what lies above from there on.", finding.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Planner.Plan(Read(wrong.Replace(to, "\"31 1/8\"", StringComparison.Ordinal))).Findings, finding => finding.Rule == "trim-band");
    }

    [Fact]
    public void Breakage_and_spares_of_a_trim_are_bought_on_top_and_written_apart()
    {
        var text = Job.Replace("\"thickness\": \"3/8\" }", "\"thickness\": \"3/8\", \"breakage\": 2, \"spares\": 3, \"flatPercent\": 5 }", StringComparison.Ordinal);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, text));
        var written = Written(text);
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, written));
        using var plan = JsonDocument.Parse(written);
        var order = plan.RootElement.GetProperty("takeoff").EnumerateArray().Single(line => line.GetProperty("item").GetString() == "bullnose");
        var planned = Planner.Plan(Read(Job)).Trims.Stocks.Single(stock => stock.Product == "bullnose").Bought;
        Assert.Equal((planned, 2, 3), (order.GetProperty("planned").GetInt32(), order.GetProperty("breakage").GetInt32(), order.GetProperty("spares").GetInt32()));
        // A twentieth of them all, rounded up.
        Assert.Equal(planned + 5 + ((planned + 5 + 19) / 20), order.GetProperty("need").GetInt32());
    }

    [Theory]
    [InlineData("\"breakage\": -1", "found -1, expected a whole number from 0 to 100000. Nearest: 0.")]
    [InlineData("\"spares\": 1.5", "Nearest: 2.")]
    [InlineData("\"flatPercent\": 120", "Nearest: 100.")]
    [InlineData("\"breakages\": 2", "Nearest: \"breakage\".")]
    public void What_is_bought_on_top_of_a_trim_is_a_whole_number(string field, string said) => Assert.Contains(
        Samples.Messages(Job.Replace("\"thickness\": \"3/8\" }", "\"thickness\": \"3/8\", " + field + " }", StringComparison.Ordinal)), message => message.Contains(said, StringComparison.Ordinal));

    private static Job Read(string text)
    {
        var job = Assert.IsType<JobReading.Understood>(Samples.Read(text)).Job;
        Assert.Empty(JobCheck.Check(job));
        return job;
    }

    private static string Written(string text) => Encoding.UTF8.GetString(PlanWriter.Write(Planner.Plan(Read(text))));
}
