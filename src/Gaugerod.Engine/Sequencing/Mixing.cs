namespace Gaugerod.Engine.Sequencing;

/// <summary>A piece as it is set: how long it takes and how much mortar.</summary>
/// <param name="Course">Its course.</param>
/// <param name="Minutes">How long it takes, its cuts among it.</param>
/// <param name="Litres">What is spread for it.</param>
internal readonly record struct PieceWork(int Course, double Minutes, double Litres)
{
    /// <summary>The face it is on, where a task goes over several; null, the default, where there is one.</summary>
    public string? Face { get; init; }

    /// <summary>Whether another is of the same course of the same face.</summary>
    public bool IsBeside(PieceWork other) => Course == other.Course && string.Equals(Face, other.Face, StringComparison.Ordinal);
}

/// <summary>What is mixed for the pieces of a task.</summary>
/// <param name="Pieces">The pieces in setting order.</param>
/// <param name="PotLife">How long a mix may be used, in minutes of elapsed time; null where that is not known.</param>
/// <param name="OpenTime">How long mortar that is combed takes tile, in minutes; null where that is not known.</param>
/// <param name="Pack">What a pack makes, in litres.</param>
internal sealed record Mixing(IReadOnlyList<PieceWork> Pieces, int? PotLife, int? OpenTime, double Pack)
{
    /// <summary>How many tiles may be combed for ahead; at least one.</summary>
    public int? Ahead => OpenTime is { } open && Pieces.Count > 0 ? Math.Max(1, (int)Math.Min(Pieces.Count, (open / Pieces.Max(piece => piece.Minutes)) + 1e-9)) : null;
}
