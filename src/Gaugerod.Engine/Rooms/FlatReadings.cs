using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Readings of how flat a face is.</summary>
public sealed record FlatReadings
{
    /// <summary>Whether it is a floor; else a wall. Some limits differ.</summary>
    public bool IsFloor { get; init; }

    /// <summary>Readings at the crossings of a grid; null for none.</summary>
    public FlatGrid? Grid { get; init; }

    /// <summary>Readings at single places, from the same line or plane as each other. Default none.</summary>
    public Sequence<FlatReading> Points { get; init; } = [];

    /// <summary>Gaps under a straightedge, each laid somewhere by itself. Default none.</summary>
    public Sequence<LaidStraightedge> Laid { get; init; } = [];
}

/// <summary>Readings on a grid, from one line or plane.</summary>
/// <param name="From">Where the first stands.</param>
/// <param name="Right">How far it is from column to column.</param>
/// <param name="Up">How far it is from row to row.</param>
/// <param name="Rows">How far the face stands out at each crossing, towards the room or up; rows from the lowest up, each from the left, all as long.</param>
public sealed record FlatGrid(Point From, Length Right, Length Up, Sequence<Sequence<Length>> Rows);

/// <summary>A reading at a place.</summary>
/// <param name="At">The place.</param>
/// <param name="Out">How far the face stands out there, towards the room or up.</param>
public sealed record FlatReading(Point At, Length Out);

/// <summary>Gaps under one straightedge.</summary>
/// <param name="From">Where the first was read.</param>
/// <param name="To">Where the last was read.</param>
/// <param name="Gaps">The gaps, evenly spaced; three or more.</param>
public sealed record LaidStraightedge(Point From, Point To, Sequence<Length> Gaps);
