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

    /// <summary>How many letters of a word stand within a width, one at the least; no half of a letter that takes two.</summary>
    private static int Fits(string word, double size, bool bold, double width)
    {
        var face = bold ? TypeFace.Bold : TypeFace.Regular;
        var (fits, room) = (0, width / (size * Point));
        while (fits < word.Length && (room -= face.Advance(word[fits])) >= 0) fits++;
        if (fits > 1 && fits < word.Length && char.IsLowSurrogate(word[fits])) fits--;
        return Math.Clamp(fits, 1, word.Length - 1);
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
            while (Width(word, size, bold) > width && word.Length > 1)
            {
                var fits = Fits(word, size, bold, width);
                lines.Add(word[..fits]);
                word = word[fits..];
            }

            line = word;
        }

        lines.Add(line);
    }
}
