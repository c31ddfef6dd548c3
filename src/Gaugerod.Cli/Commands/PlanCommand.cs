using System.Globalization;
using Gaugerod.Cli.Writing;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Lists;
using Gaugerod.Plane;

namespace Gaugerod.Cli.Commands;

/// <summary>What <c>plan</c> was asked.</summary>
/// <param name="Path">The job file; <c>-</c> for standard input.</param>
/// <param name="Folder">Where the sheets go; null when only plan.json is wanted on standard output.</param>
/// <param name="Json">Whether plan.json goes to standard output.</param>
/// <param name="Large">Whether the limit on the number of pieces is lifted.</param>
/// <param name="Quiet">Whether only faults are said.</param>
internal sealed record PlanRequest(string Path, string? Folder, bool Json, bool Large, bool Quiet)
{
    /// <summary>A price list; null for none.</summary>
    public string? Prices { get; init; }
}

/// <summary>Plans a job and writes its sheets.</summary>
internal static class PlanCommand
{
    /// <summary>Does it and gives the exit code.</summary>
    public static async Task<int> Run(PlanRequest ask, Works works, Desk desk, FolderWriter writer, CancellationToken token)
    {
        if (ask.Folder is { } named && string.IsNullOrWhiteSpace(named))
        {
            await desk.Words.WriteLineAsync("error: found no name after --out, expected a folder. Nearest: --out . for the folder you are in.");
            return Exit.Unusable;
        }

        if (ask is { Folder: null, Json: false })
        {
            await desk.Words.WriteLineAsync("error: where should the sheets go? Expected --out DIR for the sheets, --json for plan.json on standard output, or both.");
            return Exit.Unusable;
        }

        // A list that cannot be used is said before anything is planned.
        PriceListReading.Understood? list = null;
        if (ask.Prices is { } path && (list = await PriceLists.Open(path, desk, token)) is null) return Exit.Unusable;
        if (await JobPlanning.Run(ask.Path, ask.Large, ask.Quiet, works, desk, token) is not { } plan) return Exit.Unusable;
        if (list is not null)
        {
            if (await PriceLists.Priced(plan, list, ask.Prices!, desk) is not { } priced) return Exit.Unusable;
            plan = priced;
            if (!ask.Quiet) await PriceLists.Say(list, plan.Price!.List, ask.Folder, desk.Words);
        }

        var planFile = await Task.Run(() => works.PlanFile(plan), token).WaitAsync(token);
        if (ask.Folder is { } folder)
        {
            // All of it is in memory before the first file is touched.
            Sequence<OutputFile> files = [new("plan.json", planFile), .. await Task.Run(() => works.Sheets(plan), token).WaitAsync(token)];
            if (writer.Write(folder, files, token) is WriteOutcome.Refused refused)
            {
                await desk.Words.WriteLineAsync("error: " + refused.Text);
                return Exit.Unusable;
            }

            if (!ask.Quiet) await SayWritten(folder, files, desk.Words);
        }

        if (ask.Json && !await desk.Result(planFile)) return Exit.Unusable;
        if (!ask.Quiet) await SayPlan(plan, desk.Words);
        return JobPlanning.ExitFor(plan);
    }

    private static async Task SayWritten(string folder, Sequence<OutputFile> files, TextWriter words)
    {
        await words.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{folder}: {files.Count} files written."));
        foreach (var file in files) await words.WriteLineAsync("  " + Path.Combine(folder, file.Name));

        // A sheet of an earlier plan on the wall is a mistake set in mortar; it is not ours to delete, but to be named.
        var own = files.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var pattern in (string[])["face-*.svg", "run-*.svg", "work.ics", "hand-over.pdf", "offer.pdf", "price.pdf", "price.csv", "price-list.csv"])
        {
            foreach (var name in Directory.EnumerateFiles(folder, pattern).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal))
            {
                if (!own.Contains(name)) await words.WriteLineAsync($"note: {Path.Combine(folder, name)} is not of this plan.");
            }
        }
    }

    private static string Packs(OrderLine line)
    {
        var (count, each) = (line.Packs.ToString(CultureInfo.InvariantCulture), line.Pack.ToString(CultureInfo.InvariantCulture));
        if (line.Pack == 1) return line.Packs == 1 ? $"1 {line.Unit}" : $"{count} {line.Unit}s";
        return line.Packs == 1 ? $"1 box of {each}" : $"{count} boxes of {each}";
    }

    private static async Task SayPlan(Plan plan, TextWriter words)
    {
        foreach (var run in plan.Runs) await words.WriteLineAsync($"{run.Request.Name}: {run.Best.Why}");
        foreach (var thing in plan.ToBuild) await words.WriteLineAsync($"{thing.Face}: {thing.Words}. {thing.From}");
        foreach (var line in plan.Order)
        {
            await words.WriteLineAsync($"{line.Item}: {Packs(line)}. {line.Basis.TrimEnd('.')}.");
        }

        foreach (var line in plan.Supplies) await words.WriteLineAsync($"{line.Supply.Name}: {SupplyWords.Packs(line)}. {SupplyWords.Basis(line, plan.Job.Tape)}");
        foreach (var task in plan.Work?.Tasks ?? []) await words.WriteLineAsync($"{WorkWords.When(task)}: {task.Name}{(task.IsEvent ? "" : $" ({WorkWords.Takes(task, plan.Job.Tape)})")}");
        if (plan.Price is { } price) await words.WriteLineAsync(PriceLists.Total(price));
        foreach (var again in plan.Again) await words.WriteLineAsync($"{again.Face}, measured again: {again.Ways[0].Words} {(again.Ways[0].Changed.Count == 0 ? "Every piece is cut as planned." : $"Cut otherwise: {string.Join(", ", again.Ways[0].Changed)}.")}");
        foreach (var line in plan.AgainOrders.Where(line => line.Short > 0)) await words.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{line.Product}: short of {line.Short}."));
        foreach (var finding in plan.Findings.Where(f => f.Level != FindingLevel.Note)) await words.WriteLineAsync(JobPlanning.Say(finding));
    }
}
