using System.CommandLine;

namespace Gaugerod.Cli;

/// <summary>Says what is wrong with the words of a command line, and what was probably meant.</summary>
internal static class Mistakes
{
    /// <summary>A line for each mistake. Empty when the words can be used.</summary>
    public static IEnumerable<string> Say(ParseResult words)
    {
        var command = words.CommandResult.Command;
        var unknown = words.UnmatchedTokens;
        if (command is RootCommand && unknown.Count > 0)
        {
            // What follows a misspelt command cannot be judged, so only the command is spoken of.
            var names = command.Subcommands.Select(c => c.Name).ToArray();
            return [$"'{unknown[0]}' is not a command; expected {string.Join(", ", names)}.{Nearest(unknown[0], names)}"];
        }

        var options = command.Options.SelectMany(o => o.Aliases.Prepend(o.Name)).ToArray();
        return unknown.Select(word => word.StartsWith('-')
                ? $"'{word}' is not an option of {command.Name}.{Nearest(word, options)}"
                : $"'{word}' is one word too many for {command.Name}.")
            .Concat(words.Errors.Select(e => e.Message).Where(m => !unknown.Any(word => m.Contains($"'{word}'", StringComparison.Ordinal))).Select(OneLine))
            .Distinct(StringComparer.Ordinal);
    }

    private static string Nearest(string word, string[] known) => Spelling.Nearest(word, known) is { } near ? $" Nearest: {near}." : "";

    private static string OneLine(string message) => string.Join(' ', message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
