using System.Globalization;

namespace Gaugerod.App.Parts;

/// <summary>Says a place of a face's flatness as a person would, by a path that goes on behind <c>flatness</c>.</summary>
internal static class FlatWords
{
    /// <summary>Such as <c>reading 3 in row 2</c> for <c>grid.heights[1][2]</c>; rows are counted from the lowest.</summary>
    public static string Place(string path)
    {
        var numbers = Numbers(path);
        var field = path.Length == 0 ? "" : path[(path.LastIndexOf('.') + 1)..].Split('[')[0];
        return (path.Split('.', '[')[0], field, numbers.Count) switch
        {
            ("grid", "heights" or "gaps", 2) => Say($"reading {numbers[1]} in row {numbers[0]}"),
            ("grid", "heights" or "gaps", 1) => Say($"row {numbers[0]} of readings"),
            ("grid", "from" or "step", _) => field is "from" ? "first reading of the grid" : "step of the grid",
            ("points", "at", > 0) => Say($"place of single reading {numbers[0]}"),
            ("points", _, > 0) => Say($"single reading {numbers[0]}"),
            ("straightedge", "gaps", 2) => Say($"gap {numbers[1]} under straightedge {numbers[0]}"),
            ("straightedge", "from" or "to", > 0) => Say($"{(field is "from" ? "beginning" : "end")} of straightedge {numbers[0]}"),
            ("straightedge", _, > 0) => Say($"straightedge {numbers[0]}"),
            _ => "flatness",
        };

        static string Say(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
    }

    private static List<int> Numbers(string path)
    {
        var numbers = new List<int>();
        for (var open = path.IndexOf('[', StringComparison.Ordinal); open >= 0; open = path.IndexOf('[', open + 1))
        {
            numbers.Add(int.Parse(path[(open + 1)..path.IndexOf(']', open)], CultureInfo.InvariantCulture) + 1);
        }

        return numbers;
    }
}
