using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Sheets;

namespace Gaugerod.Bench;

/// <summary>
/// What things cost in processor time rather than by the clock, taken in turn: on a machine that others load as well, the
/// clock says more of them than of us.
/// </summary>
internal static class ProcessorTime
{
    private const int Rounds = 15;

    /// <param name="only">Only what begins so.</param>
    public static void Print(string only)
    {
        var (shower, cloakroom) = (Subjects.Sample("guest-shower"), Subjects.Sample("cloakroom"));
        Job[] walls = [Subjects.PlainWall(1), Subjects.PlainWall(2), Subjects.PlainWall(4)];
        var plan = Planner.Plan(shower);
        var file = Subjects.Bytes("guest-shower");
        var problem = Subjects.Problem(shower);
        var model = new RunModel(problem, LineSearch.Find(problem).Model.Joint);
        var wall = Subjects.Problem(walls[0]);
        var wallModel = new RunModel(wall, wall.Joint.Wanted);
        (string What, int Times, Action Work)[] works =
        [
            ("plan the guest shower", 10, () => Planner.Plan(shower)),
            ("plan the cloakroom", 40, () => Planner.Plan(cloakroom)),
            ("plan the plain wall", 40, () => Planner.Plan(walls[0])),
            ("plan it twice as wide", 40, () => Planner.Plan(walls[1])),
            ("plan it four times as wide", 40, () => Planner.Plan(walls[2])),
            ("read the shower's job file", 100, () => JobReader.Read(file, "guest-shower.json")),
            ("write the shower's plan.json", 20, () => PlanWriter.Write(plan)),
            ("write the shower's sheets.pdf", 4, () => SheetWriter.Pdf(plan)),
            ("shower: whole search", 20, () => LineSearch.Find(problem)),
            ("shower: search, one joint width", 200, () => new JointSearch(new(problem, model.Joint)).Improve().Last()),
            ("shower: full 1/64 in sweep, face by face", 1, () => Sweep.Best(model)),
            ($"shower: {Sweep.Sample(model, Sweep.Across(model) / 28)} whole placings", 1, () => Sweep.Sample(model, Sweep.Across(model) / 28)),
            ("wall: search, one joint width", 500, () => new JointSearch(new(wall, wallModel.Joint)).Improve().Last()),
            ("wall: full 1/64 in sweep", 1, () => Sweep.Best(wallModel)),
        ];
        works = [.. works.Where(work => work.What.StartsWith(only, StringComparison.Ordinal))];
        var spent = works.Select(_ => new List<double>()).ToArray();
        for (var round = -5; round < Rounds; round++)
        {
            for (var i = 0; i < works.Length; i++)
            {
                var before = Environment.CpuUsage.TotalTime;
                for (var k = 0; k < works[i].Times; k++) works[i].Work();
                if (round >= 0) spent[i].Add((Environment.CpuUsage.TotalTime - before).TotalMilliseconds / works[i].Times);
            }
        }

        Console.WriteLine("| What | Least, ms | Median, ms |\n|---|---:|---:|");
        for (var i = 0; i < works.Length; i++)
        {
            spent[i].Sort();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {works[i].What} | {spent[i][0]:0.000} | {spent[i][Rounds / 2]:0.000} |"));
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"\nshower: {Sweep.Scorings(model)} face scorings in the sweep; {Sweep.AllPlacings(model):0.000e0} placings of the whole run."));
    }
}
