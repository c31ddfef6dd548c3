using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>
/// What a tick stands for: a piece of a name and a size. Another plan may give the name to another piece, and what was cut for
/// the one must not pass for the other.
/// </summary>
internal static class PieceTick
{
    /// <summary>The tick of a piece, such as <c>B3:764000x301625:straight</c>, its size in steps.</summary>
    public static string Of(Piece piece) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"{piece.Id}:{piece.Width.Steps}x{piece.Height.Steps}:{Gaugerod.Engine.Planning.PieceWords.Of(piece.Kind)}");

    /// <summary>The tick of a piece of trim, such as <c>t4:112000:left mitre, right factory</c>.</summary>
    public static string Of(string id, Length length, string ends) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{id}:{length.Steps}:{ends}");

    /// <summary>The name of the piece a tick was for.</summary>
    public static string Name(string tick) => tick.Split(':')[0];
}
