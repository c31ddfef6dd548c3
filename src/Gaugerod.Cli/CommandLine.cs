using System.CommandLine;
using System.CommandLine.Invocation;
using Gaugerod.Cli.Commands;
using Gaugerod.Cli.Writing;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;

namespace Gaugerod.Cli;

/// <summary>The words of the command line, and what they start.</summary>
internal static class CommandLine
{
    /// <summary>Runs the words and gives the exit code.</summary>
    public static async Task<int> Run(string[] args, Works works, Desk desk)
    {
        var root = Root(works, desk);
        // No "@file" words: a job file whose name begins so is a file like any other.
        var words = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (words.Action is ParseErrorAction)
        {
            foreach (var mistake in Mistakes.Say(words)) await desk.Words.WriteLineAsync("error: " + mistake);
            await desk.Words.WriteLineAsync("Try 'gaugerod --help'.");
            return Exit.Unusable;
        }

        var output = new StringWriter();
        try
        {
            var code = await words.InvokeAsync(new() { EnableDefaultExceptionHandler = false, Output = output, Error = desk.Words });
            return await desk.Result(output.ToString().ReplaceLineEndings("\n")) ? code : Exit.Unusable;
        }
        catch (OperationCanceledException)
        {
            await desk.Words.WriteLineAsync("Stopped; nothing was written.");
            return Exit.Stopped;
        }
        catch (Exception e)
        {
            await desk.Words.WriteLineAsync($"error: gaugerod itself went wrong ({e.GetType().Name}: {e.Message}). Please report it with the job file.");
            return Exit.Broken;
        }
    }

    private static RootCommand Root(Works works, Desk desk)
    {
        var root = new RootCommand("From tape readings of rooms that are out of plumb to where the first tile goes, every cut, gauge-rod marks and boxes to buy.")
        {
            Plan(works, desk), Check(works, desk), New(desk), Rules(desk),
        };
        Help.ExamplesFirst(root);
        root.SetAction(words => Help.Show(root, words));
        return root;
    }

    private static Argument<string> JobFile() => new("JOB.json") { Description = "The job file; - for standard input." };

    private static Option<bool> Large() => new("--large") { Description = "Plan the job even if it has more than 10,000 pieces." };

    private static Command Plan(Works works, Desk desk)
    {
        var job = JobFile();
        var folder = new Option<string?>("--out", "-o") { Description = "The folder for plan.json, sheets.pdf and the drawings; made when missing.", HelpName = "DIR" };
        var prices = new Option<string?>("--prices") { Description = "A price list of your own, in CSV: what the job itself does not price is looked up in it.", HelpName = "LIST.csv" };
        var json = new Option<bool>("--json") { Description = "Print plan.json, and nothing else, to standard output." };
        var large = Large();
        var quiet = new Option<bool>("--quiet", "-q") { Description = "Say nothing but faults." };
        var command = new Command("plan", "Plans a job and writes its sheets.") { job, folder, prices, json, large, quiet };
        command.SetAction((words, token) => PlanCommand.Run(
            new(words.GetRequiredValue(job), words.GetValue(folder), words.GetValue(json), words.GetValue(large), words.GetValue(quiet)) { Prices = words.GetValue(prices) },
            works, desk, new FolderWriter(), token));
        return command;
    }

    private static Command Check(Works works, Desk desk)
    {
        var job = JobFile();
        var large = Large();
        var command = new Command("check", "Plans a job and prints only what the checks found.") { job, large };
        command.SetAction((words, token) => CheckCommand.Run(words.GetRequiredValue(job), words.GetValue(large), works, desk, token));
        return command;
    }

    private static Command Rules(Desk desk)
    {
        var region = new Option<string?>("--region") { Description = "Only those of one region: US, UK, EU or AU.", HelpName = "REGION" };
        region.AcceptOnlyFromAmong([.. Enum.GetValues<Region>().Select(RegionWords.Short)]);
        var command = new Command("rules", "Prints the published limits that the checks go by, with where they come from.") { region };
        command.SetAction((words, _) => RulesCommand.Run(words.GetValue(region), desk));
        return command;
    }

    private static Command New(Desk desk)
    {
        var name = new Argument<string>("NAME") { Description = "The new job file, with or without .json. A file that is there is never overwritten." };
        var sample = new Option<string>("--sample") { Description = "The sample to begin from.", DefaultValueFactory = _ => Samples.Names[0] };
        sample.AcceptOnlyFromAmong(Samples.Names);
        var command = new Command("new", "Writes a sample job to begin from.") { name, sample };
        command.SetAction((words, _) => NewCommand.Run(words.GetRequiredValue(name), words.GetRequiredValue(sample), desk));
        return command;
    }
}
