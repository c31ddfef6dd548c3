using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>
/// Refuses readings that no wall can have. The shares are common practice, no source: a corner that leans by a tenth
/// of its height, or a floor that falls by a tenth of the wall's width, is a slip of the pen or a shape to be given by
/// its corners.
/// </summary>
internal static class ReadingLimits
{
    private const int AbsurdShare = 10;
    private static readonly Length Largest = Length.FromMillimetres(100_000);
    private static readonly Length AlwaysPlausible = Length.FromMillimetres(50);

    public static IEnumerable<Fault> Check(FaceReadings readings, ReadingPlace place)
    {
        var (width, height) = (readings.Width, readings.Height);
        var sizes = new (string Name, Length? Value)[]
        {
            ("width.foot", width.Foot), ("width.middle", width.Middle), ("width.top", width.Top),
            ("height.left", height.Left), ("height.right", height.Right),
            ("levelLine.left", readings.LevelLine?.Left), ("levelLine.right", readings.LevelLine?.Right),
        };
        var bad = false;
        foreach (var (name, value) in sizes)
        {
            if (value is not { } size || (size > Length.Zero && size <= Largest)) continue;
            bad = true;
            yield return new($"{place.Path}.readings.{name}", place.Say(size), $"more than zero and at most {place.Say(Largest)}");
        }

        if (bad) yield break;
        foreach (var fault in Between(readings, place)) yield return fault;
        var lowest = Length.Min(height.Left, height.Right ?? height.Left);
        var differences = new (string Name, Length? Value, Length Of, string What)[]
        {
            ("lean.left", readings.Lean.Left, height.Left, "height of that corner"),
            ("lean.right", readings.Lean.Right, height.Right ?? height.Left, "height of that corner"),
            ("width.middle", width.Middle - width.Foot, lowest, "wall's height between the width here and at the foot"),
            ("width.top", width.Top - width.Foot, lowest, "wall's height between the width here and at the foot"),
            ("levelLine.right", readings.LevelLine?.Right - readings.LevelLine?.Left, width.Foot, "wall's width between the readings at left and right"),
        };
        foreach (var (name, value, of, what) in differences)
        {
            if (value is not { } difference || difference.Abs() <= Length.Max(AlwaysPlausible, Length.FromSteps(of.Steps / AbsurdShare))) continue;
            yield return new(
                $"{place.Path}.readings.{name}",
                name.StartsWith("lean", StringComparison.Ordinal) ? place.Say(difference) : $"a difference of {place.Say(difference.Abs())}",
                $"at most a tenth of the {what}",
                "read it again, or give the face by its corners");
        }
    }

    private static IEnumerable<Fault> Between(FaceReadings readings, ReadingPlace place)
    {
        if (readings.LevelLine is not { } line) yield break;
        var (before, most) = (Length.Zero, Length.Max(AlwaysPlausible, Length.FromSteps(readings.Width.Foot.Steps / AbsurdShare)));
        for (var i = 0; i < line.Between.Count; i++)
        {
            var (station, path) = (line.Between[i], string.Create(CultureInfo.InvariantCulture, $"{place.Path}.readings.levelLine.between[{i}]"));
            if (station.At <= before || station.At >= readings.Width.Foot)
            {
                yield return new(path, $"a place {place.Say(station.At)} from the left", $"places between the corners, left to right: more than {place.Say(before)} and less than {place.Say(readings.Width.Foot)}");
            }
            else if ((station.Height - line.Left).Abs() > most)
            {
                yield return new(path, $"a difference of {place.Say((station.Height - line.Left).Abs())} from the reading at the left", "at most a tenth of the wall's width", "read it again, or give the face by its corners");
            }

            before = Length.Max(before, station.At);
        }
    }
}
