using System.Text;
using Gaugerod.Cli.Writing;
using Gaugerod.Engine.Planning;
using Gaugerod.Files;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Plane;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Cli;

/// <summary>What came of reading a job: the job, or everything that is wrong with it, a line each.</summary>
/// <param name="Job">The job; null when there are faults.</param>
/// <param name="Faults">One line for each fault, with file, place, what was found and what was expected.</param>
internal sealed record ReadJob(Job? Job, Sequence<string> Faults);

/// <summary>The one place where the command line touches the rooms below. Tests put others in its place.</summary>
/// <param name="Read">Reads and checks a job; the flag lifts the limit on how many pieces a job may have.</param>
/// <param name="Plan">Plans it step by step; the last step carries the plan.</param>
/// <param name="PlanFile">The plan as plan.json.</param>
/// <param name="Sheets">Everything else that goes into the folder.</param>
internal sealed record Works(
    Func<ReadOnlyMemory<byte>, string, bool, ReadJob> Read,
    Func<Job, IEnumerable<PlanStep>> Plan,
    Func<Plan, byte[]> PlanFile,
    Func<Plan, Sequence<OutputFile>> Sheets)
{
    /// <summary>The real ones.</summary>
    public static Works Real { get; } = new(ReadAndCheck, Planner.Steps, PlanWriter.Write, Draw);

    private static ReadJob ReadAndCheck(ReadOnlyMemory<byte> bytes, string name, bool large)
    {
        return JobReader.Read(bytes, name) switch
        {
            JobReading.Understood read => Checked(read, large),
            JobReading.Refused refused => Refused(refused.Faults),
            var other => throw new InvalidOperationException($"A reading of a kind that is not known here: {other.GetType().Name}."),
        };
    }

    private static ReadJob Checked(JobReading.Understood read, bool large)
    {
        var faults = JobCheck.Check(read.Job, large);
        return faults.Count == 0 ? new(read.Job, []) : Refused(faults.Select(read.Locate).Concat(read.Doubts));
    }

    private static ReadJob Refused(IEnumerable<FileFault> faults) => new(null, faults.Select(f => f.Say()).ToSequence());

    private static Sequence<OutputFile> Draw(Plan plan)
    {
        var names = new FileNames();
        return
        [
            new("sheets.pdf", PdfWriter.Write(JobSheets.Pages(plan), plan.Job.Name)),
            .. plan.Work is null ? [] : (OutputFile[])[new("work.ics", CalendarWriter.Write(WorkCalendar.Of(plan), plan.Job.Name))],
            .. RunDrawings.Of(plan).Select(run => new OutputFile(names.Make("run-", run.Run, ".svg"), Encoding.UTF8.GetBytes(SvgWriter.Write(run.Drawing)))),
            .. Prices(plan),
            .. plan.Job.HandOver is null ? [] : (OutputFile[])[new("hand-over.pdf", PdfWriter.Write(HandOverSheets.Pages(plan), plan.Job.Name))],
            .. FaceDrawings.Of(plan).Select(face => new OutputFile(names.Make("face-", face.Face, ".svg"), Encoding.UTF8.GetBytes(SvgWriter.Write(face.Drawing)))),
        ];
    }

    // What is the client's and what is the setter's own are never one file.
    private static IEnumerable<OutputFile> Prices(Plan plan)
    {
        if (plan.Price is not { } price) yield break;
        yield return new("offer.pdf", PdfWriter.Write(QuoteSheets.Pages(plan), plan.Job.Name));
        yield return new("price.pdf", PdfWriter.Write(EstimateSheets.Pages(plan), plan.Job.Name));
        yield return new("price.csv", CsvWriter.Write(PriceTable.Of(price)));
        if (price.List.Count > 0) yield return new("price-list.csv", CsvWriter.Write(ListTable.Of(price.List)));
    }
}
