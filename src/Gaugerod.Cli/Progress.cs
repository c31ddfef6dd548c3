namespace Gaugerod.Cli;

/// <summary>One line that says how far the work is, written over and over in its place.</summary>
/// <param name="words">Where a person watches; null when nobody does.</param>
internal sealed class Progress(TextWriter? words)
{
    private const int MostLetters = 79;
    private int _shown;

    /// <summary>Puts a text in the place of the last one.</summary>
    public void Say(string text)
    {
        if (words is null) return;
        var line = text.Length > MostLetters ? text[..MostLetters] : text;
        words.Write("\r" + line.PadRight(_shown));
        words.Flush();
        _shown = line.Length;
    }

    /// <summary>Takes the line away.</summary>
    public void Clear()
    {
        if (words is null) return;
        words.Write("\r" + new string(' ', _shown) + "\r");
        words.Flush();
        _shown = 0;
    }
}
