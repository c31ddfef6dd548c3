using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>How a strip of trim ends: how far beyond the end of the field's side, in steps.</summary>
/// <param name="End">What it ends at.</param>
/// <param name="Inner">How far, along its side that faces the field.</param>
/// <param name="Outer">The same along its other side.</param>
/// <param name="Meets">The edge it ends at.</param>
internal readonly record struct StripEnd(TrimEnd End, long Inner, long Outer, FieldEdge Meets)
{
    /// <summary>How much of the last piece a mitre takes, of its other side or of its back.</summary>
    public long Takes { get; init; }

    /// <summary>The corner piece or stop there; null for none.</summary>
    public CornerPieceKind? Kind { get; init; }

    /// <summary>How long that is along the strip.</summary>
    public long Piece { get; init; }

    /// <summary>The strip beyond a corner of two walls: its face and its edge; null where it ends at no such corner piece.</summary>
    public (string Face, FieldEdge Edge)? RoundWall { get; init; }

    /// <summary>How far a mitred piece goes on round the end; zero for none.</summary>
    public long Return { get; init; }

    /// <summary>How much shorter a piece that ends here is along its other side, or at its back: of a mitre, or of an end that is sawn to a lean.</summary>
    public long Shortens => Math.Max(Takes, Math.Abs(Inner - Outer));

    /// <summary>How far its long point stands.</summary>
    public long Long => Math.Max(Inner, Outer);

    /// <summary>Square where it is shorter: a factory end has no lean.</summary>
    public StripEnd Squared() => this with { Inner = Math.Min(Inner, Outer), Outer = Math.Min(Inner, Outer) };

    /// <summary>Cut short for a corner piece or a stop, and the joint before it.</summary>
    public StripEnd Short(CornerPieceKind kind, Length piece, TrimProduct product)
    {
        var at = Long - (piece + product.Joint).Steps;
        return new(kind == CornerPieceKind.Stop ? TrimEnd.StopPiece : TrimEnd.CornerPiece, at, at, Meets) { Kind = kind, Piece = piece.Steps };
    }

    /// <summary>An end that no other trim meets: with its return, its stop, or as it is.</summary>
    public StripEnd Finished(TrimProduct product, TrimEnding asked)
    {
        if (asked.Return is { } goesOn) return Squared() with { End = TrimEnd.Mitre, Takes = product.Thickness.Steps, Return = goesOn.Steps };
        if (End != TrimEnd.Stop) return this;
        return product.Stop is { } stop ? Squared().Short(CornerPieceKind.Stop, stop, product) : Squared();
    }
}
