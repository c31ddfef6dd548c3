using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>Which way sheets lie.</summary>
public enum BoardLay
{
    /// <summary>Whichever comes out better.</summary>
    Either,

    /// <summary>The long side across the studs.</summary>
    Across,

    /// <summary>The long side along the studs.</summary>
    Along,
}

/// <summary>What sheets are screwed to.</summary>
public sealed record Studs
{
    /// <summary>The middle of the first, from the face's x = 0, or from its y = 0 where they run level; null where all are listed.</summary>
    public Length? From { get; init; }

    /// <summary>How far it is from one's middle to the next, on from the first.</summary>
    public Length? Apart { get; init; }

    /// <summary>The middles of others, or of all. Default none.</summary>
    public Sequence<Length> At { get; init; } = [];

    /// <summary>How wide each is, which is what two sheets share where they meet on it.</summary>
    public Length Width { get; init; }

    /// <summary>Whether they are joists that run from left to right on the face.</summary>
    public bool RunLevel { get; init; }

    /// <summary>All middles from one place to another, each once, rising.</summary>
    public IEnumerable<Length> Between(Length least, Length most)
    {
        var all = new SortedSet<Length>(At);
        if (From is { } first && Apart is { } apart)
        {
            for (var at = first; at < most; at += apart) all.Add(at);
        }

        return all.Where(at => at > least && at < most);
    }
}

/// <summary>How a face is boarded.</summary>
/// <param name="Of">The board's name.</param>
public sealed record BoardRequest(string Of)
{
    /// <summary>What the sheets are screwed to; null for a floor under them, into which they are screwed on a grid.</summary>
    public Studs? Studs { get; init; }

    /// <summary>Which way the sheets lie.</summary>
    public BoardLay Lay { get; init; }

    /// <summary>The gap over a floor, a bath, a tray or what else stands at the face's edge. Default 1/4 in or 6 mm in the file.</summary>
    public Length Foot { get; init; }

    /// <summary>The gap at all other edges of the face: corners, ceiling. Default 1/8 in or 3 mm in the file.</summary>
    public Length Edges { get; init; }

    /// <summary>Up to which height of the face water runs on it, so that seams there keep from under tile joints where they can; null where that is not asked.</summary>
    public Length? Wet { get; init; }
}
