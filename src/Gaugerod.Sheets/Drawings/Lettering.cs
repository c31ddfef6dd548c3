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
                var fits = word.Length - 1;
                while (fits > 1 && Width(word[..fits], size, bold) > width) fits--;
                lines.Add(word[..fits]);
                word = word[fits..];
            }

            line = word;
        }

        lines.Add(line);
    }
}
