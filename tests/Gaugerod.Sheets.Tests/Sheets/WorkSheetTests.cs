using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>The sheet of the order of work.</summary>
public sealed class WorkSheetTests
{
    private static readonly string Words = string.Join('\n', JobSheets.Pages(WorkSamples.Plan).Where(page => page.Title.Contains("Order of work", StringComparison.Ordinal)).SelectMany(page => page.Marks.OfType<Mark.Text>()).Select(mark => mark.Words));

    [Fact]
    public void Days_holds_mixes_and_the_check_beside_them_stand_on_the_sheet()
    {
        Assert.Contains("Thu 11 Mar 2027", Words, StringComparison.Ordinal);
        Assert.Contains("Mixes: set wall", Words, StringComparison.Ordinal);
        Assert.Contains("____ %", Words, StringComparison.Ordinal);
        Assert.Contains("80 %", Words, StringComparison.Ordinal);
        Assert.Contains("no pace given", Words, StringComparison.Ordinal);
        Assert.Contains("asbestos", Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_asks_for_no_order_has_no_such_sheet() => Assert.DoesNotContain(JobSheets.Pages(Samples.GuestShower), page => page.Title.Contains("Order of work", StringComparison.Ordinal));

    [Fact]
    public void What_is_spread_over_nights_is_said_day_by_day()
    {
        var task = WorkSamples.Plan.Work!.Tasks.First(one => one.Name == "tear-out");
        Assert.Equal(2, task.Days.Count);
        Assert.Equal("Thu 11 Mar 2027 09:00 to Fri 12 Mar 2027 10:00", WorkWords.When(task));
    }
}
