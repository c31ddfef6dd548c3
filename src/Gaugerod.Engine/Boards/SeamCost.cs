namespace Gaugerod.Engine.Boards;

/// <summary>What is said against a layout of sheets, the gravest first: that is also the order in which layouts are compared.</summary>
/// <param name="AtCorners">Corners of openings, or of what stands at the face, that a seam runs into.</param>
/// <param name="InLine">Seams that go on in line with one of the next row.</param>
/// <param name="Narrow">Pieces narrower or lower than <see cref="BoardLimits.Narrow"/>.</param>
/// <param name="Shares">What the pieces take of sheets, each as if a sheet gave only pieces like it, in parts of <see cref="Sheet"/>; of layouts that were cut out, whole sheets.</param>
/// <param name="Pieces">How many pieces.</param>
/// <param name="Under">How much of the seams lies under tile joints where water runs, in steps.</param>
/// <param name="Seams">How long all seams are, in steps.</param>
internal readonly record struct SeamCost(int AtCorners, int InLine, int Narrow, long Shares, int Pieces, long Under, long Seams)
{
    /// <summary>A whole sheet: any two numbers up to ten divide it.</summary>
    public const long Sheet = 2520 * 2520;

    public static SeamCost operator +(SeamCost a, SeamCost b) => new(
        a.AtCorners + b.AtCorners, a.InLine + b.InLine, a.Narrow + b.Narrow, a.Shares + b.Shares, a.Pieces + b.Pieces, a.Under + b.Under, a.Seams + b.Seams);

    /// <summary>The better before the worse.</summary>
    public static Comparer<SeamCost> Order { get; } = Comparer<SeamCost>.Create(Compare);

    public bool IsBetterThan(SeamCost other) => Compare(this, other) < 0;

    private static int Compare(SeamCost a, SeamCost b) =>
        (a.AtCorners, a.InLine, a.Narrow, a.Shares, a.Pieces, a.Under, a.Seams).CompareTo((b.AtCorners, b.InLine, b.Narrow, b.Shares, b.Pieces, b.Under, b.Seams));
}

/// <summary>Lengths that layouts are judged by; common practice, no source.</summary>
internal static class BoardLimits
{
    /// <summary>A seam keeps so far from a corner that points into the board: a narrower leg beside it breaks.</summary>
    public static readonly long FromCorner = Plane.Measure.Length.FromInches(2).Steps;

    /// <summary>A piece is no narrower where it can be had.</summary>
    public static readonly long Narrow = Plane.Measure.Length.FromInches(4).Steps;

    /// <summary>On a floor, seams of neighbouring rows keep so far apart.</summary>
    public static readonly long FloorStagger = Plane.Measure.Length.FromInches(12).Steps;
}
