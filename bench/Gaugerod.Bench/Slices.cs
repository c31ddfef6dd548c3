using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Bench;

/// <summary>How long the planning works between two steps at which a page may draw: warm, the least of several rounds for each step.</summary>
internal static class Slices
{
    private const int Rounds = 12;

    public static void Print(string sample)
    {
        var job = Stages.Load(sample);
        var least = new List<double>();
        for (var round = 0; round < Rounds; round++)
        {
            var (step, watch) = (0, Stopwatch.StartNew());
            foreach (var _ in Planner.Steps(job))
            {
                var took = watch.Elapsed.TotalMilliseconds;
                if (step == least.Count) least.Add(took);
                else least[step] = Math.Min(least[step], took);
                step++;
                watch.Restart();
            }
        }

        var longest = least.Select((took, step) => (took, step)).OrderByDescending(of => of.took).Take(8);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{least.Count} steps, {least.Sum():0.0} ms; the longest: {string.Join(", ", longest.Select(of => string.Create(CultureInfo.InvariantCulture, $"{of.took:0.00} ms (step {of.step})")))}"));
    }
}
