using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Gaugerod.Cli;

/// <summary>Help that opens with examples, since that is what most people look for.</summary>
internal static class Help
{
    private const string Examples = """
        Examples:
          gaugerod new kitchen                          a sample job to put your readings in
          gaugerod plan kitchen.json --out sheets       plan it; print sheets/sheets.pdf and go
          gaugerod check kitchen.json                   only what the checks found
          gaugerod plan kitchen.json --out sheets --prices mine.csv   with the prices of your list
          gaugerod plan - --json < kitchen.json         plan.json for another program

        """;

    private const string Codes = """
        Exit codes:
          0    done
          1    the plan is made but breaks a must or holds a stop: somebody has to decide
          2    the input, the words or the folder could not be used; nothing was written
          70   the program itself went wrong
          130  stopped with Ctrl-C; nothing was written

        """;

    /// <summary>Puts the examples before, and the exit codes after, the help of a command and all below it.</summary>
    public static void ExamplesFirst(RootCommand root)
    {
        foreach (var option in root.Options.OfType<HelpOption>())
        {
            if (option.Action is HelpAction plain) option.Action = new Framed(plain);
        }
    }

    /// <summary>Shows the help of the root, for a command line without words.</summary>
    public static int Show(RootCommand root, ParseResult words) =>
        root.Options.OfType<HelpOption>().Single().Action is Framed framed ? framed.Invoke(words) : Exit.Done;

    private sealed class Framed(HelpAction plain) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine(Examples);
            plain.Invoke(parseResult);
            output.WriteLine(Codes);
            return Exit.Done;
        }
    }
}
