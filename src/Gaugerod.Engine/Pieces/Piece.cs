using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>What kind of piece it is, by how it is cut.</summary>
public enum PieceKind
{
    /// <summary>A whole tile.</summary>
    Full,

    /// <summary>One straight cut along one side.</summary>
    Straight,

    /// <summary>Two square cuts that meet at a corner of the tile.</summary>
    Corner,

    /// <summary>A corner of the tile is cut out.</summary>
    Notch,

    /// <summary>Something is cut out of one side.</summary>
    Slot,

    /// <summary>A round hole, in the tile or at its side.</summary>
    Hole,

    /// <summary>One or two cuts, at least one of them not parallel to the tile's side by more than the tape shows.</summary>
    Taper,

    /// <summary>Anything else.</summary>
    Shaped,
}

/// <summary>A side of a tile as it stands on the wall.</summary>
public enum TileSide
{
    /// <summary>The left side.</summary>
    Left,

    /// <summary>The right side.</summary>
    Right,

    /// <summary>The lower side.</summary>
    Bottom,

    /// <summary>The upper side.</summary>
    Top,
}

/// <summary>A cut as it is marked on the tile: measured from the factory side across from it, at both its ends.</summary>
/// <param name="Away">The side of the tile towards which material is taken off.</param>
/// <param name="First">The distance from the opposite side, at the cut's lower or left end.</param>
/// <param name="Last">The same at its upper or right end; equal to the first when the cut is parallel.</param>
/// <param name="From">Where the cut begins, from the tile's lower or left side.</param>
/// <param name="To">Where it ends, from the same side.</param>
/// <param name="Faces">The name of the field's edge that the cut meets.</param>
public readonly record struct CutMark(TileSide Away, Length First, Length Last, Length From, Length To, string Faces)
{
    /// <summary>The shorter of the two distances.</summary>
    public Length Least => Length.Min(First, Last);

    /// <summary>The longer of the two distances.</summary>
    public Length Most => Length.Max(First, Last);
}

/// <summary>
/// How a piece lies when its tile is turned, or moved, back to how its bond lies unturned: a rectangular tile then stands
/// upright, as it comes to the saw.
/// </summary>
/// <param name="Outline">The piece's outline.</param>
/// <param name="Inner">Holes drilled in it.</param>
/// <param name="Tile">The whole tile's outline.</param>
/// <param name="Laid">The whole tile's outline on the face.</param>
/// <param name="Turn">How far the bond is turned on the face.</param>
/// <param name="Right">How far right of the run's zero the face's stands.</param>
/// <param name="Up">How far above it.</param>
public sealed record PieceFrame(Ring Outline, Sequence<Ring> Inner, Ring Tile, Ring Laid, Heading Turn, Length Right, Length Up)
{
    /// <summary>Where a place on the face lies in the frame.</summary>
    public Point Lay(Point onFace) => Turn.Back(onFace.Moved(Right, Up));
}

/// <summary>A tile or part of one as it ends up on the wall.</summary>
/// <param name="Id">Its number on the job: run letter and number, read as one reads the wall, from the top left.</param>
/// <param name="Kind">How it is cut.</param>
/// <param name="Face">The face it is on.</param>
/// <param name="Course">Its course, counted from 1 at the lowest of the run.</param>
/// <param name="Column">Its place in the course, counted from 1 at the left of the face.</param>
/// <param name="Product">The product's name.</param>
/// <param name="Cell">The box around the whole tile: on the face, or where it has a <see cref="Frame"/>, in that.</param>
/// <param name="Outline">The piece's outline in the face's coordinates.</param>
/// <param name="Inner">Holes drilled in it.</param>
/// <param name="Smallest">Its narrowest leg; of a whole tile, its shorter side.</param>
/// <param name="Cuts">How its cuts are marked, measured in the cell.</param>
public sealed record Piece(
    string Id, PieceKind Kind, string Face, int Course, int Column, string Product, Box Cell,
    Ring Outline, Sequence<Ring> Inner, Length Smallest, Sequence<CutMark> Cuts)
{
    /// <summary>How it lies unturned; null where tiles are upright rectangles on the face itself.</summary>
    public PieceFrame? Frame { get; init; }

    /// <summary>How far its tile's width is turned counter-clockwise from level, as it lies in the cell; default not at all.</summary>
    public Angle Lies { get; init; }

    /// <summary>Which side of its tile the grain runs along; null for a tile without one, the default.</summary>
    public Grain? Grain { get; init; }

    /// <summary>Which way the grain runs in the cell, counter-clockwise from level, from 0 to under 180 degrees; null without one.</summary>
    public Angle? GrainInCell => Grain is { } side ? Grains.Way(side, Lies) : null;

    /// <summary>Which way it runs on the face.</summary>
    public Angle? GrainOnFace => Grain is { } side ? Grains.Way(side, Lies + (Frame?.Turn.Angle ?? Angle.Zero)) : null;

    /// <summary>The outline as it lies in the cell.</summary>
    public Ring Upright => Frame?.Outline ?? Outline;

    /// <summary>The holes as they lie in the cell.</summary>
    public Sequence<Ring> UprightInner => Frame?.Inner ?? Inner;

    /// <summary>The whole tile as it lies in the cell.</summary>
    public Ring Tile => Frame?.Tile ?? Ring.Of(Cell);

    /// <summary>The whole tile on the face.</summary>
    public Ring Laid => Frame?.Laid ?? Ring.Of(Cell);

    /// <summary>Whether nothing is cut off it: it only has holes.</summary>
    public bool IsOnlyDrilled => Kind != PieceKind.Full && Cuts.Count == 0;

    /// <summary>Whether the tile is a rectangle.</summary>
    public bool OfRectangle => Frame is null || Frame.Tile == Ring.Of(Cell);

    /// <summary>Where a place on the face lies against the cell: right of and above its lower left corner.</summary>
    public Point InCell(Point onFace) => (Frame?.Lay(onFace) ?? onFace).Moved(-Cell.Left, -Cell.Bottom);

    /// <summary>The width of the box around it on the face.</summary>
    public Length Width => Outline.Bounds.Width;

    /// <summary>The height of the box around it on the face.</summary>
    public Length Height => Outline.Bounds.Height;
}
