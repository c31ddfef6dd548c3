using System.Globalization;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Rules;

/// <summary>Pieces in findings.</summary>
internal static class PieceNames
{
    // A wall's worth of numbers is not read; those named show where to look.
    private const int MostNamed = 12;

    /// <summary>Their numbers, of many the first twelve.</summary>
    internal static string Of(IReadOnlyCollection<Piece> pieces) =>
        string.Join(", ", pieces.Take(MostNamed).Select(piece => piece.Id)) + (pieces.Count > MostNamed ? string.Create(CultureInfo.InvariantCulture, $" and {pieces.Count - MostNamed} more") : "");
}
