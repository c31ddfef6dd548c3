using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Pieces;

/// <summary>Which way a side of the field runs, as far as cutting is concerned.</summary>
internal enum EdgeClass
{
    /// <summary>Nearly plumb: it cuts a tile's width.</summary>
    Side,

    /// <summary>Nearly level: it cuts a tile's height.</summary>
    Level,

    /// <summary>
    /// Neither, by more than <see cref="Rake"/> allows: a gable, a raking ceiling. A piece there runs out to nothing somewhere whatever the
    /// placing, so such an edge has no leg and does not count for slivers or the smallest cut.
    /// </summary>
    Raking,
}

internal static class EdgeClasses
{
    public static EdgeClass Of(long run, long rise)
    {
        var (x, y) = (Math.Abs(run), Math.Abs(rise));
        return x * Rake.OneIn <= y ? EdgeClass.Side : y * Rake.OneIn <= x ? EdgeClass.Level : EdgeClass.Raking;
    }

    public static EdgeClass Of(FieldEdge edge) =>
        Of(edge.To.X.Steps - edge.From.X.Steps, edge.To.Y.Steps - edge.From.Y.Steps);
}
