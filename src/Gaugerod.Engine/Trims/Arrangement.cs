using Gaugerod.Plane;

namespace Gaugerod.Engine.Trims;

/// <summary>A piece of a line, in steps from where the line begins.</summary>
internal readonly record struct Stretch(long From, long To)
{
    public long Length => To - From;
}

/// <summary>Where the pieces of a line lie.</summary>
/// <param name="Cost">What it costs.</param>
/// <param name="Pieces">The pieces, one after another.</param>
internal sealed record Arrangement(TrimCost Cost, Sequence<Stretch> Pieces)
{
    /// <summary>The shortest piece, of a mitred one its short side.</summary>
    public long Shortest(TrimLine line) => Pieces.Count == 1 ? Pieces[0].Length - line.BothTake : Pieces.Select((piece, i) => piece.Length - (i == 0 ? line.BeginTakes : 0) - (i == Pieces.Count - 1 ? line.EndTakes : 0)).Min();

    /// <summary>Twice the middle of every joint.</summary>
    public IEnumerable<long> Middles => Pieces.Zip(Pieces.Skip(1), (one, next) => one.To + next.From);

    /// <summary>Twice the distance, middle to middle, from a joint to the nearest of the field's; null where there is no such pair.</summary>
    public long? Stagger(TrimLine line) =>
        Pieces.Count < 2 || line.Beside.Count == 0 ? null : Middles.Min(middle => line.Beside.Min(joint => Math.Abs(middle - joint.Middle)));

    /// <summary>The pieces between joints that begin at some places.</summary>
    public static Sequence<Stretch> Between(long length, long joint, IEnumerable<long> places)
    {
        var pieces = new List<Stretch>();
        var from = 0L;
        foreach (var place in places)
        {
            pieces.Add(new(from, place));
            from = place + joint;
        }

        return pieces.Append(new(from, length)).ToSequence();
    }
}
