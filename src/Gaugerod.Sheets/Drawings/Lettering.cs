namespace Gaugerod.Sheets.Drawings;

/// <summary>Measures and breaks text set in Inter.</summary>
internal static class Lettering
{
    /// <summary>A point of 1/72 in, in millimetres.</summary>
    public const double Point = 25.4 / 72;

    /// <summary>How high a capital and a figure stand, in parts of the letter size.</summary>
    public const double CapHeight = 0.727;

    public static double Width(string words, double size, bool bold = false)
    {
        var face = bold ? TypeFace.Bold : TypeFace.Regular;
        var sum = 0.0;
        foreach (var letter in words) sum += face.Advance(letter);
        return sum * size * Point;
    }

    public static double Cap(double size) => CapHeight * size * Point;

    /// <summary>How far apart the baselines of running text stand, in millimetres.</summary>
    public static double Leading(double size) => size * Point * 1.32;

    /// <summary>Breaks text at spaces so that no line is wider than the width; a single longer word is broken inside.</summary>
    public static List<string> Wrap(string words, double size, bool bold, double width)
    {
        var lines = new List<string>();
        foreach (var paragraph in words.Split('\n')) WrapParagraph(paragraph, size, bold, width, lines);
        return lines;
    }

    /// <summary>How many letters of a word from one on stand within a width, one at the least; no half of a letter that takes two.</summary>
    private static int Fits(string word, int from, double size, bool bold, double width)
    {
        var face = bold ? TypeFace.Bold : TypeFace.Regular;
        var (to, room) = (from, width / (size * Point));
        while (to < word.Length && (room -= face.Advance(word[to])) >= 0) to++;
        if (to - from > 1 && to < word.Length && char.IsLowSurrogate(word[to])) to--;
        return Math.Max(to - from, Math.Min(1, word.Length - from));
    }

    private static void WrapParagraph(string paragraph, double size, bool bold, double width, List<string> lines)
    {
        var line = "";
        foreach (var whole in paragraph.Split(' '))
        {
            var word = whole;
            var longer = line.Length == 0 ? word : line + " " + word;
            if (Width(longer, size, bold) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            var from = 0;
            for (var fits = Fits(word, from, size, bold, width); from + fits < word.Length; fits = Fits(word, from, size, bold, width))
            {
                lines.Add(word.Substring(from, fits));
                from += fits;
            }

            line = word[from..];
        }

        lines.Add(line);
    }
}
