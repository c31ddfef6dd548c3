using System.Globalization;
using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>A line of trim and what is asked of it, drawn at random.</summary>
internal sealed record LineCase(TrimLine Line, TrimJoints Joints, long Twice)
{
    private static readonly TrimEnd[] s_ends = Enum.GetValues<TrimEnd>();

    /// <summary>Lines so short that all their arrangements can be listed.</summary>
    public static Gen<LineCase> Small { get; } = Drawn(6, 12, 34);

    /// <summary>Lines of up to a dozen pieces, too many ways to list.</summary>
    public static Gen<LineCase> Large { get; } = Drawn(20, 60, 240);

    /// <summary>What is asked as told of the best: the cost, twice the stagger where it counts, the shortest piece.</summary>
    public string Told(int cuts, int trimmed, int inner, int pieces, long? stagger, long shortest) => string.Create(
        CultureInfo.InvariantCulture, $"{cuts} cuts {trimmed} trimmed {inner} inner {pieces} pieces stagger {(Joints is TrimJoints.Staggered or TrimJoints.Repeating ? stagger : null)} shortest {shortest}");

    public string Told(Arrangement? found) =>
        found is null ? "none" : Told(found.Cost.Cuts, found.Cost.Trimmed, found.Cost.Inner, found.Cost.Pieces, Joints == TrimJoints.Repeating ? Lattice(found) : found.Stagger(Line), found.Shortest(Line));

    /// <summary>Twice the distance of a repeating line's joints from the field's, as if the field went on for ever.</summary>
    private long? Lattice(Arrangement found)
    {
        if (found.Pieces.Count < 2) return null;
        var pitch = RepeatedJoints.Pitch(Line)!.Value * 2;
        var past = (((found.Middles.First() - Line.Beside[0].Middle) % pitch) + pitch) % pitch;
        return Math.Min(past, pitch - past);
    }

    private static Gen<LineCase> Drawn(int leastStock, int mostStock, int mostLength) =>
        from stock in Gen.Int[leastStock, mostStock]
        from length in Gen.Int[leastStock / 2, mostLength]
        from joint in Gen.Int[0, 3]
        from least in Gen.Int[Math.Max(3, stock / 4), Math.Max(3, stock * 2 / 3)]
        from ends in Gen.Select(Gen.Int[0, s_ends.Length - 1], Gen.Int[0, s_ends.Length - 1])
        from joints in Gen.Enum<TrimJoints>().Where(joints => joints != TrimJoints.Unbroken)
        from pitch in Gen.Int[stock / 2, stock * 3 / 2]
        from even in Gen.Int[0, 3]
        from begin in Gen.Int[0, pitch]
        from wide in Gen.Int[0, 3]
        from slips in Gen.Int[0, 2].Array[40]
        from asked in Gen.Int[0, stock / 2]
        from takes in Gen.Select(Gen.Int[0, stock / 3], Gen.Int[0, stock / 3])
        select Case(new TrimLine(length, s_ends[ends.Item1], s_ends[ends.Item2], stock, joint, least, Beside(length, begin, pitch, wide, even > 0 || joints == TrimJoints.Repeating ? null : slips))
        {
            BeginTakes = s_ends[ends.Item1] == TrimEnd.Mitre ? takes.Item1 : 0, EndTakes = s_ends[ends.Item2] == TrimEnd.Mitre ? takes.Item2 : 0,
        }, joints, asked);

    private static Sequence<FieldJoint> Beside(int length, int begin, int pitch, int wide, int[]? slips)
    {
        var joints = new List<FieldJoint>();
        for (var (from, i) = (begin, 0); from < length; from += pitch + (slips?[i % slips.Length] ?? 0), i++) joints.Add(new(from, from + wide));
        return joints.ToSequence();
    }

    // A centred line gives its odd step to a joint, which then stands half a step off: a stagger is asked only where there is none.
    private static LineCase Case(TrimLine line, TrimJoints joints, long asked) => new(line, joints, joints switch
    {
        TrimJoints.Free or TrimJoints.InLine => 0,
        TrimJoints.Centred => (line.Length - line.Joint) % 2 == 0 && (line.Length - line.Stock) % 2 == 0 ? asked : 0,
        _ => asked,
    });
}
