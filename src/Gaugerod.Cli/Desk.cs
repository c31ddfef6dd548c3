using System.Text;
using Gaugerod.Cli.Writing;

namespace Gaugerod.Cli;

/// <summary>Where the program reads and writes: results to one stream, words for the person to another.</summary>
/// <param name="In">Standard input.</param>
/// <param name="Out">Standard output: the result and nothing else.</param>
/// <param name="Words">Standard error: messages and progress.</param>
/// <param name="InIsTyped">Whether a person types the input, who must be told that it is waited for.</param>
/// <param name="WordsAreSeen">Whether a person watches the messages, so that progress is worth saying.</param>
internal sealed record Desk(Stream In, Stream Out, TextWriter Words, bool InIsTyped, bool WordsAreSeen)
{
    private static readonly UTF8Encoding s_utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The desk of the running process.</summary>
    public static Desk OfProcess() => new(
        Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.Error, !Console.IsInputRedirected, !Console.IsErrorRedirected);

    /// <summary>Writes text to the result stream, as UTF-8. False when that could not be done, which has then been said.</summary>
    public Task<bool> Result(string text) => Result(s_utf8.GetBytes(text));

    /// <summary>Writes bytes to the result stream. False when that could not be done, which has then been said.</summary>
    public async Task<bool> Result(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            await Out.WriteAsync(bytes);
            await Out.FlushAsync();
            return true;
        }
        catch (IOException e)
        {
            await Words.WriteLineAsync($"error: standard output: {WriteTrouble.Say(e)}.");
            return false;
        }
    }
}
