using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>How far something that is not built yet might give way to begin with: 50 mm or 2 in either way, as far as its wall and its studs let it.</summary>
internal static class RangeRoom
{
    /// <summary>The least and the most, as they would be typed; null while too little is read.</summary>
    /// <param name="desk">The job.</param>
    /// <param name="asked">The place in the job of the measure that is asked.</param>
    public static (string Least, string Most)? Around(JobDesk desk, string asked)
    {
        var dot = asked.LastIndexOf('.');
        var (thing, field) = (asked[..dot], asked[(dot + 1)..]);
        if (Read(desk, asked) is not { } at) return null;
        var tape = Tapes.Of(desk);
        var give = tape.Unit == LengthUnit.Inch ? Length.FromInches(2) : Length.FromMillimetres(50);
        var (down, up) = (give, give);
        // A thing stays on its wall whatever moves first: half of the room is left to each of its measures.
        if (Room(desk, thing, field) is { } room) (down, up) = (Length.Min(give, room.Before), Length.Min(give, room.Beyond));
        return (Say(at - Down(down)), Say(at + Down(up)));

        Length Down(Length length) => tape.Down(Length.Max(length, Length.Zero));
        string Say(Length length) => LengthText.NearestBare(length, tape);
    }

    private static (Length Before, Length Beyond)? Room(JobDesk desk, string thing, string field)
    {
        var face = thing[..(thing.IndexOf(']', StringComparison.Ordinal) + 1)];
        if (FaceMeasures.Around(desk, face) is not { } wall || Read(desk, thing + "." + field) is not { } at) return null;
        var (width, height) = (Read(desk, thing + ".width"), Read(desk, thing + ".height"));
        var under = FieldId.Text(desk, thing + ".heightsFrom") is "level line" ? (Length?)null : Length.Zero;
        return field switch
        {
            "left" when width is { } wide => Sideways(desk, thing, at, wide) ?? (Half(at - wall.Left), Half(wall.Right - at - wide)),
            "width" when Read(desk, thing + ".left") is { } left => (Half(at), Sideways(desk, thing, left, at)?.Beyond ?? Half(wall.Right - left - at)),
            "bottom" when height is { } high && under is { } line => (Half(at + line - wall.Bottom), Half(wall.Top - at - line - high)),
            "height" when Read(desk, thing + ".bottom") is { } bottom && under is { } line => (Half(at), Half(wall.Top - bottom - line - at)),
            "height" or "from" when under is { } line => (Half(at + line - wall.Bottom), Half(wall.Top - at - line)),
            _ => null,
        };
    }

    /// <summary>What the studs leave on either side.</summary>
    private static (Length Before, Length Beyond)? Sideways(JobDesk desk, string thing, Length left, Length width) =>
        Read(desk, thing + ".range.studs[0]") is { } one && Read(desk, thing + ".range.studs[1]") is { } other ? (left - one, other - left - width) : null;

    private static Length? Read(JobDesk desk, string path) => FaceMeasures.Read(desk, JobPath.Get(desk.Root, path));

    private static Length Half(Length length) => Length.FromSteps(length.Steps / 2);
}
