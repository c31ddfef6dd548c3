using System.Text;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Wants call a wall's edges and its zones alike, so no zone is called like an edge.</summary>
public sealed class ZoneNameTests
{
    [Theory]
    [InlineData("foot", "\"foot 2\"")]
    [InlineData("bench", "\"bench 2\"")]
    [InlineData("a.b", "\"ab\"")]
    public void A_zone_that_is_called_like_an_edge_is_refused_with_a_name_that_would_do(string name, string nearest)
    {
        var fault = Assert.Single(Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes($$"""
            { "format": "gaugerod-job/1", "name": "names", "units": "mm",
              "products": [{ "name": "t", "width": 297, "height": 97 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "fixtures": [{ "name": "bench", "to": 600, "height": 455 }],
                "zones": [{ "kind": "band", "name": "{{name}}", "from": 1000 }] }],
              "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """), "job.json")).Faults);
        Assert.Equal(("faces[0].zones[0].name", nearest), (fault.Path, fault.Nearest));
    }
}
