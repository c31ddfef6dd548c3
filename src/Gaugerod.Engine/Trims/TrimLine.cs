using Gaugerod.Plane;

namespace Gaugerod.Engine.Trims;

/// <summary>How a line of trim ends.</summary>
public enum TrimEnd
{
    /// <summary>In the open: a factory end shows.</summary>
    Stop,

    /// <summary>Over the end of the next trim: a factory end shows.</summary>
    Covers,

    /// <summary>At a wall, a floor or behind something: a sawn end will do.</summary>
    Hidden,

    /// <summary>Against the trim that covers it: a sawn end will do.</summary>
    Butts,

    /// <summary>On a mitre, measured to its long point.</summary>
    Mitre,

    /// <summary>At a corner piece, with a joint between.</summary>
    CornerPiece,

    /// <summary>At a stop, a piece with a finished end, with a joint between.</summary>
    StopPiece,
}

/// <summary>A joint of the field beside a line, in steps from where the line begins.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct FieldJoint(long From, long To)
{
    /// <summary>Twice its middle: half a step is never lost.</summary>
    public long Middle => From + To;
}

/// <summary>A line of trim, in steps.</summary>
/// <param name="Length">How long it is, to the long points of its mitres.</param>
/// <param name="Begin">How it ends where it begins.</param>
/// <param name="End">How it ends at its other end.</param>
/// <param name="Stock">How long a piece comes.</param>
/// <param name="Joint">The joint between two pieces.</param>
/// <param name="Least">The shortest piece that is set, of a mitred one along its short side; at least 1.</param>
/// <param name="Beside">The joints of the field beside it, in any order.</param>
internal sealed record TrimLine(long Length, TrimEnd Begin, TrimEnd End, long Stock, long Joint, long Least, Sequence<FieldJoint> Beside)
{
    /// <summary>What a mitre or a lean at its beginning takes of its first piece: so much shorter is the piece along its other side.</summary>
    public long BeginTakes { get; init; }

    /// <summary>What a mitre or a lean at its end takes of its last piece.</summary>
    public long EndTakes { get; init; }

    /// <summary>Whether its ends lean the same way, so that each shortens another side of a piece that is the whole line.</summary>
    public bool Leans { get; init; }

    /// <summary>What both ends take of a piece that is the whole line.</summary>
    public long BothTake => Leans ? Math.Max(BeginTakes, EndTakes) : BeginTakes + EndTakes;

    /// <summary>The shortest first piece, to its long point.</summary>
    public long LeastFirst => Least + BeginTakes;

    /// <summary>The shortest last piece, to its long point.</summary>
    public long LeastLast => Least + EndTakes;

    /// <summary>Where a trim joint may begin and stand nowhere nearer to a joint of the field, middle to middle, than half of <paramref name="twice"/>.</summary>
    public Ranges Clear(long twice) => Ranges.Of(0, Length).Without(twice <= 0
        ? Ranges.None
        : Ranges.Of(Beside.Select(joint => (Half(joint.Middle - Joint - twice) + 1, -Half(-(joint.Middle - Joint + twice)) - 1))));

    /// <summary>
    /// Twice a distance from the field's joints that no arrangement can exceed. A joint of the field beyond the first piece and before the last has a trim joint
    /// on both its sides, no further from each other than a whole piece with its joint.
    /// </summary>
    public long MostStagger =>
        Beside.Any(joint => joint.Middle - Joint >= 2 * Stock && joint.Middle - Joint <= 2 * (Length - Joint - Stock)) ? Stock + Joint : 2 * Length;

    /// <summary>Where a trim joint in line with a joint of the field begins; of two steps as near the lower.</summary>
    public IEnumerable<long> InLine => Beside.Select(joint => Half(joint.Middle - Joint)).Where(place => place > 0 && place < Length).Distinct().Order();

    /// <summary>Twice the distance from a trim joint to the nearest joint of the field, middle to middle; null where the field has none.</summary>
    public long? Stagger(long place) => Beside.Count == 0 ? null : Beside.Min(joint => Math.Abs((2 * place) + Joint - joint.Middle));

    /// <summary>The half, rounded down.</summary>
    internal static long Half(long twice) => twice >> 1;
}
