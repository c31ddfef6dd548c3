using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>Why a zone cannot be cut.</summary>
/// <param name="Field">Which of its fields is wrong, with a full stop before it; empty for the zone as a whole.</param>
/// <param name="Found">What was found.</param>
/// <param name="Expected">What could stand there.</param>
/// <param name="Offers">Zones that might do in its place, the nearest first. Only one that can be cut is ever said.</param>
internal sealed record ZoneRefusal(string Field, string Found, string Expected, IEnumerable<ZoneOffer> Offers)
{
    /// <summary>What to do where no other zone will; null when there is nothing to say.</summary>
    public string? Advice { get; init; }
}

/// <summary>A zone that might do in place of one that was asked for.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Words">How it differs, in words.</param>
internal sealed record ZoneOffer(Zone Zone, string Words);

/// <summary>A zone that was cut, in the way of those that come after it.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="From">Where it begins from below.</param>
/// <param name="To">Where it ends above.</param>
internal sealed record TakenZone(Zone Zone, Length From, Length To)
{
    /// <summary>Whether a later band runs into it: over a band, or with its foot or its head through a rug, which may lie in it as a whole.</summary>
    public bool IsMetBy(Zone.Strip band) => Zone switch
    {
        Zone.Strip => band.To is { } head ? band.From < To && head > From : band.From >= From && band.From < To,
        Zone.Rug => Holds(band.From) || (band.To is { } end && Holds(end)),
        _ => false,
    };

    /// <summary>What it is and where, in words.</summary>
    public string Say(Func<Length, string> say) => Zone switch
    {
        Zone.Strip { To: null } => $"\"{Zone.Name}\", which is laid from {say(From)} up",
        _ => $"\"{Zone.Name}\", which is laid from {say(From)} to {say(To)} up",
    };

    private bool Holds(Length height) => height > From && height < To;
}

/// <summary>Says what an offered zone changes, as values to put into the job.</summary>
internal static class ZoneMends
{
    /// <summary>The values.</summary>
    /// <param name="path">Where the zone stands in the job.</param>
    /// <param name="asked">The zone asked for.</param>
    /// <param name="offered">The zone offered in its place.</param>
    /// <param name="tape">How lengths are said.</param>
    public static Sequence<Mend> Of(string path, Zone asked, Zone offered, Tape tape)
    {
        return (asked, offered) switch
    {
        (Zone.Strip was, Zone.Strip now) =>
        [
            .. Changed("from", was.From - was.ReadFrom, now.From - was.ReadFrom),
            .. now.To is { } head ? Changed("to", was.To - was.ReadFrom, head - was.ReadFrom) : was.To is null ? [] : new[] { new Mend(path + ".to", "null") },
        ],
        (Zone.Rug was, Zone.Rug now) =>
        [
            .. Changed("left", was.Box.Left, now.Box.Left), .. Changed("bottom", was.Box.Bottom - was.ReadFrom, now.Box.Bottom - was.ReadFrom),
            .. Changed("width", was.Box.Width, now.Box.Width), .. Changed("height", was.Box.Height, now.Box.Height),
        ],
        (Zone.Border was, Zone.Border now) => [.. Changed("width", was.Width, now.Width)],
        _ => [],
    };

        IEnumerable<Mend> Changed(string field, Length? was, Length now) => was == now ? [] : [Mend.Of($"{path}.{field}", now, tape)];
    }
}
