using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Planning;

/// <summary>What the kinds of pieces are called, in plan.json and on the sheets alike.</summary>
public static class PieceWords
{
    /// <summary>The kind in one word: <c>full</c>, <c>straight</c>, <c>taper</c>.</summary>
    public static string Of(PieceKind kind) => kind switch
    {
        PieceKind.Full => "full",
        PieceKind.Straight => "straight",
        PieceKind.Corner => "corner",
        PieceKind.Notch => "notch",
        PieceKind.Slot => "slot",
        PieceKind.Hole => "hole",
        PieceKind.Taper => "taper",
        PieceKind.Shaped => "shaped",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind of piece without a name."),
    };
}
