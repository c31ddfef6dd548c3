using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Which way the courses run.</summary>
public enum Lay
{
    /// <summary>Courses run level; a tile's width lies along them.</summary>
    Level,

    /// <summary>Courses run upright; a tile's width stands up.</summary>
    Upright,
}

/// <summary>How the offset goes on from course to course.</summary>
public enum Stepping
{
    /// <summary>Always the same way.</summary>
    OneWay,

    /// <summary>There and back.</summary>
    BackAndForth,
}

/// <summary>The bond a run asks for.</summary>
/// <param name="Lay">Which way the courses run.</param>
public abstract record BondRequest(Lay Lay)
{
    /// <summary>Joints in line both ways.</summary>
    public sealed record Grid(Lay Lay) : BondRequest(Lay);

    /// <summary>Each course set off from the one before by a part of a tile and its joint.</summary>
    /// <param name="Lay">Which way the courses run.</param>
    /// <param name="Numerator">The part's numerator; 1 or more.</param>
    /// <param name="Denominator">The part's denominator; more than the numerator, at most 64.</param>
    /// <param name="Stepping">How it goes on.</param>
    public sealed record Running(Lay Lay, int Numerator, int Denominator, Stepping Stepping) : BondRequest(Lay);
}

/// <summary>The joint width a run allows.</summary>
/// <param name="Least">No narrower than this.</param>
/// <param name="Wanted">The width to use when nothing asks for another.</param>
/// <param name="Most">No wider than this.</param>
public sealed record JointRange(Length Least, Length Wanted, Length Most)
{
    /// <summary>One width and no other.</summary>
    public static JointRange Only(Length width) => new(width, width, width);
}
