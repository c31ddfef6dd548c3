using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.TrimTests;

namespace Gaugerod.App.Tests;

/// <summary>A person says where a job lies, so whose limits hold.</summary>
[Collection(RigCollection.Name)]
public sealed class RegionTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task Where_a_job_lies_is_chosen_beside_its_name_and_kept(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await PartAsync(page, "Job");
        await page.GetByLabel("Where the job lies").SelectOptionAsync("AU");
        await LookAsync(page, "region", phone);
        Assert.Equal("AU", (string?)(await JobAsync(page))["region"]);
        await PartAsync(page, "Job");
        await page.GetByLabel("Where the job lies").SelectOptionAsync("");
        Assert.Null((await JobAsync(page))["region"]);
    }
}
