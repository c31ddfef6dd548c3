using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>How a piece of trim ends.</summary>
public enum PieceEnd
{
    /// <summary>As it came.</summary>
    Factory,

    /// <summary>Sawn square.</summary>
    Sawn,

    /// <summary>Mitred; the piece is measured to the long point.</summary>
    Mitred,
}

/// <summary>Which end of a piece is mitred, seen with its finished side up.</summary>
public enum MitreHand
{
    /// <summary>Its left end.</summary>
    Left,

    /// <summary>Its right end.</summary>
    Right,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>A piece of trim. A line runs so that the field lies to its left; its beginning is at a piece's right hand.</summary>
/// <param name="Id">Its number on the job.</param>
/// <param name="From">Where it begins, from where its line begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Begin">How it ends where it begins.</param>
/// <param name="End">How it ends at its other end.</param>
/// <param name="Outline">Its outline on the face.</param>
public sealed record TrimPiece(string Id, Length From, Length To, PieceEnd Begin, PieceEnd End, Ring Outline)
{
    /// <summary>Its length, to the long point of a mitre or of an end that leans.</summary>
    public Length Length => To - From;

    /// <summary>Which end is mitred; null for none.</summary>
    public MitreHand? Hand => (Begin == PieceEnd.Mitred, End == PieceEnd.Mitred) switch
    {
        (true, true) => MitreHand.Both,
        (true, false) => MitreHand.Right,
        (false, true) => MitreHand.Left,
        _ => null,
    };

    /// <summary>How much of its length its mitres take, and ends that are sawn to a lean: what it is shorter along its other side, or at its back.</summary>
    public Length MitreTakes { get; init; }

    /// <summary>The number of the piece or bar of stock it is cut from, from 1 for each product.</summary>
    public int Stock { get; init; }
}

/// <summary>What a piece is that is bought for one place.</summary>
public enum CornerPieceKind
{
    /// <summary>For a corner that points out of the field, or of two walls into the room.</summary>
    Outside,

    /// <summary>For a corner that points into the field, or of two walls into the house.</summary>
    Inside,

    /// <summary>With a finished end, where a line stops in the open.</summary>
    Stop,
}

/// <summary>What a corner piece covers of a face.</summary>
/// <param name="Face">The face.</param>
/// <param name="Outline">Its outline there.</param>
public sealed record CornerPart(string Face, Ring Outline);

/// <summary>A corner piece, which belongs to two lines, or a stop.</summary>
/// <param name="Id">Its number on the job.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Reach">How far it reaches along a line.</param>
/// <param name="Parts">What it covers: of two faces where it goes round the corner of two walls.</param>
public sealed record CornerPiece(string Id, CornerPieceKind Kind, Length Reach, Sequence<CornerPart> Parts)
{
    /// <summary>Whether it goes round the corner of two walls.</summary>
    public bool RoundWalls => Parts.Count > 1;
}

/// <summary>A piece that goes on round the end of a line, into the depth: mitred where it meets the line.</summary>
/// <param name="Id">Its number on the job.</param>
/// <param name="AtLeft">Whether it stands at the line's left end, which is where the line ends; else at its right.</param>
/// <param name="Length">How long it is, to its long point.</param>
/// <param name="MitreTakes">How much of its back the mitre takes.</param>
public sealed record TrimReturn(string Id, bool AtLeft, Length Length, Length MitreTakes)
{
    /// <summary>Which of its own ends is mitred, seen with its finished side up: a return at the left goes on to the left.</summary>
    public MitreHand Hand => AtLeft ? MitreHand.Right : MitreHand.Left;

    /// <summary>The number of the piece or bar of stock it is cut from.</summary>
    public int Stock { get; init; }
}

/// <summary>One way to put a line's joints.</summary>
/// <param name="Joints">What they keep to.</param>
/// <param name="Cuts">Cuts at the saw, mitres among them.</param>
/// <param name="Trimmed">Pieces shorter than the stock.</param>
/// <param name="Lengths">The pieces from the line's beginning.</param>
/// <param name="Stagger">The least distance between a trim joint and one of the field, middle to middle; null where there is no such pair.</param>
/// <param name="Why">What is to be said for it.</param>
public sealed record TrimWay(TrimJoints Joints, int Cuts, int Trimmed, Sequence<Length> Lengths, Length? Stagger, string Why);

/// <summary>A line of trim, planned.</summary>
/// <param name="Face">The face it is on.</param>
/// <param name="Edge">The edge it stands at.</param>
/// <param name="Product">The trim's name.</param>
/// <param name="Joints">Where its joints were asked to be.</param>
/// <param name="From">Where it begins, on its side that faces the field.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Begin">How it ends where it begins.</param>
/// <param name="End">How it ends at its other end.</param>
/// <param name="Length">How long it is, to its long points.</param>
/// <param name="Pieces">Its pieces from its beginning.</param>
/// <param name="Beside">The middles of the field's joints beside it, from its beginning.</param>
/// <param name="Ways">Ways to put its joints, the one taken first; none where there is none.</param>
public sealed record PlannedTrim(
    string Face, string Edge, string Product, TrimJoints Joints, Point From, Point To, TrimEnd Begin, TrimEnd End, Length Length,
    Sequence<TrimPiece> Pieces, Sequence<Length> Beside, Sequence<TrimWay> Ways)
{
    /// <summary>The corner piece or stop at which it begins; null for none. A corner piece is named by both its lines.</summary>
    public CornerPiece? AtBegin { get; init; }

    /// <summary>The corner piece or stop at which it ends.</summary>
    public CornerPiece? AtEnd { get; init; }

    /// <summary>The corner pieces and stops at its two ends.</summary>
    public IEnumerable<CornerPiece> CornerPieces => new[] { AtBegin, AtEnd }.OfType<CornerPiece>();

    /// <summary>What goes on round its ends.</summary>
    public Sequence<TrimReturn> Returns { get; init; } = [];
}

/// <summary>Corner pieces or stops of one kind.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="RoundWalls">Whether they go round corners of two walls.</param>
/// <param name="Left">Of stops, how many stand at the left end of their line; zero for corner pieces.</param>
/// <param name="Count">How many there are.</param>
public sealed record CornerPieceCount(CornerPieceKind Kind, bool RoundWalls, int Left, int Count);

/// <summary>What is bought of a trim.</summary>
/// <param name="Product">The trim's name.</param>
/// <param name="Bought">Pieces or bars of stock.</param>
/// <param name="LowerBound">No fewer would do.</param>
/// <param name="CornerPieces">Corner pieces and stops, by kind.</param>
public sealed record TrimStock(string Product, int Bought, int LowerBound, Sequence<CornerPieceCount> CornerPieces);

/// <summary>The trims of a job.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Stocks">What is bought.</param>
/// <param name="Findings">What does not agree or cannot be had.</param>
public sealed record TrimPlan(Sequence<PlannedTrim> Lines, Sequence<TrimStock> Stocks, Sequence<Finding> Findings);
