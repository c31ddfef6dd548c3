using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>How steeply a floor falls: so much over so much.</summary>
/// <param name="Rise">How far it rises, more than zero.</param>
/// <param name="Over">Over which distance, more than zero.</param>
public readonly record struct Fall(long Rise, long Over)
{
    /// <summary>1/4 in in a foot, the least of IRC P2709.</summary>
    public static Fall Usual { get; } = new(1, 48);

    /// <summary>The fall as a part of one.</summary>
    public double Part => Rise / (double)Over;
}

/// <summary>What the edge of a bed does.</summary>
public enum Perimeter
{
    /// <summary>All of it stands at one height, that of its farthest place: nearer places fall more steeply.</summary>
    Level,

    /// <summary>The bed falls alike everywhere along the way the water takes: the edge stands the higher, the farther it is.</summary>
    Constant,
}

/// <summary>What a floor falls to: a round drain, a channel along a line, or one of its edges.</summary>
/// <param name="Hole">The name of the hole that is the drain; null for a channel or an edge.</param>
/// <param name="Line">The channel's middle line; null for a hole or an edge.</param>
public sealed record DrainAt(string? Hole, FoldLine? Line)
{
    /// <summary>The straight edge that water runs off over: the front of a bench, a sill, a curb, a niche's bottom; null for a drain.</summary>
    public string? Edge { get; init; }
}

/// <summary>A bed that falls, as it was asked for.</summary>
/// <param name="Least">How thick it is at the drain; zero where it feathers out.</param>
public sealed record BedRequest(Length Least)
{
    /// <summary>How steeply it falls from its farthest place. Default 1 in 48.</summary>
    public Fall Fall { get; init; } = Fall.Usual;

    /// <summary>What its edge does. Default level.</summary>
    public Perimeter Perimeter { get; init; }

    /// <summary>Its drains, where it is not all to fall to the one that folds run to. Default none.</summary>
    public Sequence<DrainAt> Drains { get; init; } = [];

    /// <summary>The edge that all of it falls to; null where it has drains.</summary>
    public string? Toward => Drains is [{ Edge: { } edge }] ? edge : null;

    /// <summary>How high the top of the curb is over the drain; null where there is none.</summary>
    public Length? Curb { get; init; }

    /// <summary>How high the threshold is over the drain; null where it was not said.</summary>
    public Length? Threshold { get; init; }

    /// <summary>What a cubic metre of it weighs, in kg; null for the usual.</summary>
    public double? Density { get; init; }

    /// <summary>What a bag of its mix makes; null where that is not known.</summary>
    public BagOfMix? Bag { get; init; }
}

/// <summary>What one bag of a mix makes.</summary>
/// <param name="Name">What it is called; null for no name.</param>
/// <param name="Litres">How much it makes, with the sand that is added to it.</param>
public sealed record BagOfMix(string? Name, double Litres)
{
    /// <summary>Sand that is added to it; null for none.</summary>
    public MoreSand? Sand { get; init; }

    /// <summary>What it is called where it is bought.</summary>
    public string Called => Name ?? "bed mix";
}
