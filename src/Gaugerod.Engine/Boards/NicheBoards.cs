using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Boards;

/// <summary>Where a piece of a niche's lining goes.</summary>
public enum NichePart
{
    /// <summary>Behind the four sides, over their edges.</summary>
    Back,

    /// <summary>Below, under the ends of left and right.</summary>
    Bottom,

    /// <summary>Above, over the ends of left and right.</summary>
    Top,

    /// <summary>At the left, between bottom and top.</summary>
    Left,

    /// <summary>At the right, between bottom and top.</summary>
    Right,
}

/// <summary>A piece of a niche's lining.</summary>
/// <param name="Id">Its number on the job, on from those of its face.</param>
/// <param name="Part">Where it goes.</param>
/// <param name="Along">Its longer side.</param>
/// <param name="Across">Its shorter side.</param>
/// <param name="Screws">How many screws it takes.</param>
public sealed record NichePiece(string Id, NichePart Part, Length Along, Length Across, int Screws)
{
    /// <summary>The number of the sheet it is cut from.</summary>
    public int Sheet { get; init; }
}

/// <summary>The lining of a niche.</summary>
/// <param name="Opening">The opening's name.</param>
/// <param name="Width">How wide it is inside, board to board.</param>
/// <param name="Height">How high it is inside.</param>
/// <param name="Depth">How deep it is, from the front of its wall's board.</param>
/// <param name="Pieces">Its five pieces.</param>
public sealed record NicheBoards(string Opening, Length Width, Length Height, Length Depth, Sequence<NichePiece> Pieces)
{
    /// <summary>How long its joints are, all taped: round the front, where its sides meet the wall's board, round the back, and its four corners.</summary>
    public Length Seams => Times(4, Width + Height + Depth);

    private static Length Times(int count, Length length) => Length.FromSteps(count * length.Steps);
}
