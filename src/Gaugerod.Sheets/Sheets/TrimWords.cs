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

    /// <summary>Both ends of a piece, seen with its finished side up: a line begins at a piece's right hand.</summary>
    public static string Ends(PlannedTrim line, TrimPiece piece)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(piece);
        var left = End(piece.End, piece == line.Pieces[^1] ? line.End : null);
        var right = End(piece.Begin, piece == line.Pieces[0] ? line.Begin : null);
        return $"left {left}, right {right}";
    }

    /// <summary>Whether a piece comes as it is: nothing is cut of it.</summary>
    public static bool IsWhole(TrimPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece is { Begin: PieceEnd.Factory, End: PieceEnd.Factory };
    }

    private static string End(PieceEnd end, TrimEnd? at)
    {
        var place = at switch
        {
            TrimEnd.Stop => " in the open",
            TrimEnd.Covers => " over the next trim",
            TrimEnd.Butts => " against the next trim",
            TrimEnd.CornerPiece => " at a corner piece",
            _ => "",
        };
        return end switch { PieceEnd.Factory => "factory", PieceEnd.Sawn => "cut", _ => "mitre" } + place;
    }
}
