using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What is set already, read as it is written.</summary>
public sealed class SetJobTests
{
    [Theory]
    [InlineData("""{ "face": "wall", "courses": 3 }""", 1, null, null)]
    [InlineData("""{ "face": "wall", "courses": 3, "from": 2 }""", 2, null, null)]
    [InlineData("""{ "face": "wall", "courses": 3, "top": 612 }""", 1, 612, null)]
    [InlineData("""{ "face": "wall", "courses": 3, "top": { "left": 612 } }""", 1, 612, null)]
    [InlineData("""{ "face": "wall", "courses": 3, "top": { "right": 610 } }""", 1, null, 610)]
    [InlineData("""{ "face": "wall", "courses": 3, "from": 2, "top": { "left": 612, "right": 610 } }""", 2, 612, 610)]
    public void Set_is_all_from_one_course_to_another_with_its_top_at_one_end_or_at_both(string set, int from, int? left, int? right)
    {
        var read = Assert.IsType<JobReading.Understood>(Read(set));
        Assert.Equal(new SetSoFar("wall", 3, Mm(left), Mm(right)) { From = from }, Assert.Single(read.Job.Runs[0].Set));
    }

    [Theory]
    [InlineData("""{ "face": "wall", "courses": 3, "from": 0 }""", "runs[0].set[0].from")]
    [InlineData("""{ "face": "wall", "courses": 3, "from": "two" }""", "runs[0].set[0].from")]
    [InlineData("""{ "face": "wall", "courses": 3, "top": { "left": "6o3" } }""", "runs[0].set[0].top.left")]
    [InlineData("""{ "face": "wall", "courses": 3, "top": { "middle": 603 } }""", "runs[0].set[0].top.middle")]
    public void What_cannot_be_read_of_it_is_said_at_its_place(string set, string place) =>
        Assert.Equal(place, Assert.Single(Assert.IsType<JobReading.Refused>(Read(set)).Faults).Path);

    private static Length? Mm(int? millimetres) => millimetres is { } some ? Length.FromMillimetres(some) : null;

    private static JobReading Read(string set) => JobReader.Read(Encoding.UTF8.GetBytes($$"""
        { "format": "gaugerod-job/1", "name": "wall", "units": "mm", "products": [{ "name": "tile", "width": 200, "height": 200 }],
          "faces": [{ "name": "wall", "readings": { "width": { "foot": 1530 }, "height": { "left": 2400 } } }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3, "set": [{{set}}] }] }
        """), "wall.json");
}
