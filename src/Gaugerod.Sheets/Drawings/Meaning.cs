namespace Gaugerod.Sheets.Drawings;

/// <summary>What an area stands for. How it looks is decided in one place, for the screen and for paper alike.</summary>
public enum Fill
{
    /// <summary>Nothing is laid down.</summary>
    None,

    /// <summary>The bare wall: joints, and what no tile covers.</summary>
    Wall,

    /// <summary>A whole tile.</summary>
    Full,

    /// <summary>A piece with one straight cut.</summary>
    Straight,

    /// <summary>A piece with two square cuts.</summary>
    Corner,

    /// <summary>A piece with a corner cut out.</summary>
    Notch,

    /// <summary>A piece with something cut out of one side.</summary>
    Slot,

    /// <summary>A piece with a round hole.</summary>
    Hole,

    /// <summary>A piece whose cut is not parallel to its side.</summary>
    Taper,

    /// <summary>A piece of any other shape.</summary>
    Shaped,

    /// <summary>A bath, a tray, a bench: what stands in front of the wall.</summary>
    Fixture,

    /// <summary>A window, a niche, a doorway.</summary>
    Opening,

    /// <summary>What is left of a tile when its pieces are cut.</summary>
    Offcut,

    /// <summary>What stands out of a face that should be flat.</summary>
    High,

    /// <summary>What lies back from a face that should be flat.</summary>
    Low,

    /// <summary>The band behind a table's head.</summary>
    Band,

    /// <summary>White paper, laid under letters that cross other marks.</summary>
    Paper,

    /// <summary>Solid graphite.</summary>
    Ink,
}

/// <summary>What a line stands for.</summary>
public enum Stroke
{
    /// <summary>The outline of a face as measured.</summary>
    Outline,

    /// <summary>The side of a whole tile.</summary>
    TileEdge,

    /// <summary>The outline of a cut piece.</summary>
    CutEdge,

    /// <summary>The side of an opening or a fixture.</summary>
    FixtureEdge,

    /// <summary>A corner of the room on the unrolled run.</summary>
    FoldLine,

    /// <summary>A line to snap on the wall.</summary>
    SnapLine,

    /// <summary>A dimension line and its ticks.</summary>
    Dimension,

    /// <summary>From a number to the piece it belongs to.</summary>
    Leader,

    /// <summary>The tile that a piece is cut from, where it is no longer there.</summary>
    Ghost,

    /// <summary>A thin line between rows or beneath a heading.</summary>
    Rule,

    /// <summary>The outline of a box to tick.</summary>
    TickBox,

    /// <summary>The thick end and ticks of a bar to be measured.</summary>
    Bar,
}

/// <summary>What letters stand for.</summary>
public enum Ink
{
    /// <summary>Ordinary writing.</summary>
    Body,

    /// <summary>What may be read second.</summary>
    Quiet,

    /// <summary>A line to snap.</summary>
    SnapLine,

    /// <summary>Writing on solid graphite.</summary>
    OnInk,
}

/// <summary>Which part of a text its place is.</summary>
public enum Anchor
{
    /// <summary>The left end of its baseline.</summary>
    Start,

    /// <summary>The middle of its baseline.</summary>
    Middle,

    /// <summary>The right end of its baseline.</summary>
    End,
}
