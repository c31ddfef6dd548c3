using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What is said of trims, in the trade's words.</summary>
public static class TrimWords
{
    /// <summary>Where joints fall beside those of the field.</summary>
    public static string Of(TrimJoints joints) => joints switch
    {
        TrimJoints.Free => "free",
        TrimJoints.InLine => "in line",
        TrimJoints.Staggered => "staggered",
        TrimJoints.Repeating => "repeating",
        TrimJoints.Centred => "centred",
        TrimJoints.Unbroken => "none",
        _ => throw new ArgumentOutOfRangeException(nameof(joints), joints, "No word for these joints."),
    };

    /// <summary>How left, right and lengths are meant wherever pieces are listed.</summary>
    public const string Key = "Pieces are seen with the finished side up and the field below them, lengths to the long point of a mitre.";

    /// <summary>Where a line stands: <c>north, head</c>; <c>north, the left side of the window</c>.</summary>
    public static string Where(PlannedTrim line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"{line.Face}, {(line.Edge.Contains('.', StringComparison.Ordinal) ? EdgeWords.Of(line.Edge) : line.Edge)}";
    }

    /// <summary>What a corner piece is.</summary>
    public static string Of(CornerPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Of(piece.Kind, piece.RoundWalls);
    }

    /// <summary>What a corner piece is.</summary>
    public static string Of(CornerPieceKind kind, bool roundWalls) => (kind, roundWalls) switch
    {
        (CornerPieceKind.Stop, _) => "stop",
        (CornerPieceKind.Outside, false) => "outside corner piece",
        (CornerPieceKind.Outside, true) => "outside corner piece round the wall's corner",
        (_, false) => "inside corner piece",
        (_, true) => "inside corner piece in the wall's corner",
    };

    /// <summary>What a return is, and which of its ends is mitred.</summary>
    public static string Of(TrimReturn piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece.AtLeft ? "return at the left end, its right end mitred" : "return at the right end, its left end mitred";
    }

    /// <summary>Both ends of a piece, seen with its finished side up: a line begins at a piece's right hand.</summary>
    public static string Ends(PlannedTrim line, TrimPiece piece)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(piece);
        var left = piece == line.Pieces[^1] ? End(piece.End, line.End, line.AtEnd, line.Returns.FirstOrDefault(turned => turned.AtLeft)) : End(piece.End);
        var right = piece == line.Pieces[0] ? End(piece.Begin, line.Begin, line.AtBegin, line.Returns.FirstOrDefault(turned => !turned.AtLeft)) : End(piece.Begin);
        return $"left {left}, right {right}";
    }

    /// <summary>Whether a piece comes as it is: nothing is cut of it.</summary>
    public static bool IsWhole(TrimPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece is { Begin: PieceEnd.Factory, End: PieceEnd.Factory };
    }

    private static string End(PieceEnd end) => end switch { PieceEnd.Factory => "factory", PieceEnd.Sawn => "cut", _ => "mitre" };

    private static string End(PieceEnd end, TrimEnd at, CornerPiece? corner, TrimReturn? turned)
    {
        var place = at switch
        {
            TrimEnd.Stop => " in the open",
            TrimEnd.Covers => " over the next trim",
            TrimEnd.Butts => " against the next trim",
            TrimEnd.CornerPiece or TrimEnd.StopPiece when corner is not null => $" at {corner.Id}",
            TrimEnd.Mitre when turned is not null => $" to {turned.Id}",
            _ => "",
        };
        return End(end) + place;
    }
}
