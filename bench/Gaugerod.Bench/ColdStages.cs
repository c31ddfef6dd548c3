using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Plans;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Bench;

/// <summary>Where the time of one plan goes in a process that has just begun, and how much of it is the compiling of methods.</summary>
internal static class ColdStages
{
    public static void Print(string sample)
    {
        var started = Process.GetCurrentProcess().StartTime;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(DateTime.Now - started).TotalMilliseconds,8:0} ms  since the process began"));
        var watch = Stopwatch.StartNew();
        var (compiling, methods) = (JitInfo.GetCompilationTime(), JitInfo.GetCompiledMethodCount());
        void Lap(string what)
        {
            var (time, more, count) = (watch.Elapsed, JitInfo.GetCompilationTime() - compiling, JitInfo.GetCompiledMethodCount() - methods);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{time.TotalMilliseconds,8:0} ms  of it {more.TotalMilliseconds,5:0} ms compiling {count,5} methods: {what}"));
            (compiling, methods) = (JitInfo.GetCompilationTime(), JitInfo.GetCompiledMethodCount());
            watch.Restart();
        }

        Lap("nothing");
        var job = Subjects.Sample(sample);
        Lap("read the job");
        _ = JobCheck.Check(job);
        Lap("check it");
        var plan = Planner.Plan(job);
        Lap("plan it");
        _ = PlanWriter.Write(plan);
        Lap("write plan.json");
        var pages = JobSheets.Pages(plan);
        Lap("draw the sheets");
        var pdf = PdfWriter.Write(pages, "cold");
        Lap("write sheets.pdf");
        _ = FaceDrawings.Of(plan).Select(face => Encoding.UTF8.GetBytes(SvgWriter.Write(face.Drawing))).ToList();
        Lap("write the faces' SVG");
        _ = PdfFinish.Of(pdf);
        Lap("go over the PDF a second time");
    }
}
