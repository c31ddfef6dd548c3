using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets;

namespace Gaugerod.App.Sheetmaking;

/// <summary>
/// What <c>js/sheetmaker.js</c> calls on its own thread, in a runtime of its own: nothing of the page is there, so a job
/// goes in as its file's text and comes out as the bytes of its sheets.
/// </summary>
[SupportedOSPlatform("browser")]
internal static partial class SheetWork
{
    /// <summary>The job sheets of a job, with the reader, the planner and the writer that the command line has.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="kind">Which sheets: <see cref="SheetKinds"/>.</param>
    /// <param name="say">Told how far the work is, in words.</param>
    /// <exception cref="InvalidOperationException">The job has faults. The page asks for no such job's sheets.</exception>
    [JSExport]
    internal static byte[] Make(string text, string kind, [JSMarshalAs<JSType.Function<JSType.String>>] Action<string> say)
    {
        say("Reading the job");
        var read = TextRead.Steps(text).Last()!;
        if (read.Job is not { } job) throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"the job has {read.Faults.Count} things to set right first"));
        var (plan, said) = ((Plan?)null, "");
        foreach (var step in Planner.Steps(job))
        {
            // The planning gives way far more often than there is something new to say.
            if (step.Plan is null && !ReferenceEquals(step.Text, said)) say("Planning the job: " + step.Text);
            (plan, said) = (step.Plan, step.Text);
        }

        say("Laying out the sheets");
        var pages = SheetKinds.Pages(plan!, kind);
        say(string.Create(CultureInfo.InvariantCulture, $"Drawing {pages.Count} sheets"));
        return SheetWriter.Pdf(pages, job.Job.Name);
    }
}
