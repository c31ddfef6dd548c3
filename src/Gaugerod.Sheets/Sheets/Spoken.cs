using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Says pieces so that they can be read aloud: numbers as one calls them across a room, letters and figures apart.</summary>
public static class Spoken
{
    private static readonly string[] s_ordinals = ["", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    /// <summary>A piece's name: <c>A 14</c>.</summary>
    public static string Name(string piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var at = piece.TakeWhile(char.IsLetter).Count();
        return $"{string.Join(' ', piece[..at].ToCharArray())} {piece[at..]}".Trim();
    }

    /// <summary>A length, never over what it is: <c>4 and 3 eighths</c>, <c>112</c>; a half millimetre is said so.</summary>
    public static string Length(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        var bare = LengthText.DownBare(length, tape);
        return string.Join(' ', bare.Split(' ').Select(Part));

        string Part(string part, int at)
        {
            if (part.Split('/') is not [var over, var under]) return part.Replace(".", " point ", StringComparison.Ordinal);
            return $"{(at > 0 ? "and " : "")}{over} {Named(under, string.Equals(over, "1", StringComparison.Ordinal))}";
        }
    }

    /// <summary>A size: <c>4 and 3 eighths by 12 inches</c>.</summary>
    public static string Size(Length width, Length height, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return $"{Length(width, tape)} by {Length(height, tape)}{(tape.Unit == LengthUnit.Inch ? " inches" : "")}";
    }

    /// <summary>What is said at the saw: the piece, its size, what it is, where it comes from.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="width">Its width as sawn.</param>
    /// <param name="height">Its height as sawn.</param>
    /// <param name="tile">Which tile, in words.</param>
    /// <param name="tape">How lengths are said.</param>
    public static string AtSaw(Piece piece, Length width, Length height, string tile, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return $"{Name(piece.Id)}. {Size(width, height, tape)}. {PieceWords.Of(piece.Kind)}. {tile}";
    }

    /// <summary>What is said at the wall: the piece, its place in the course, whether it is cut.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="width">Its width as sawn.</param>
    /// <param name="height">Its height as sawn.</param>
    /// <param name="place">Its place from the left, from 1.</param>
    /// <param name="of">How many the course has.</param>
    /// <param name="course">The course.</param>
    /// <param name="tape">How lengths are said.</param>
    public static string AtWall(Piece piece, Length width, Length height, int place, int of, int course, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var what = piece.Kind == PieceKind.Full ? "Full tile" : $"{char.ToUpperInvariant(PieceWords.Of(piece.Kind)[0])}{PieceWords.Of(piece.Kind)[1..]}, {Size(width, height, tape)}";
        return string.Create(CultureInfo.InvariantCulture, $"{Name(piece.Id)}. {what}. {Ordinal(place)} of {of}, course {course}.");
    }

    private static string Ordinal(int number) => number < s_ordinals.Length ? s_ordinals[number] : string.Create(CultureInfo.InvariantCulture, $"number {number}");

    private static string Named(string under, bool one) => under switch
    {
        "2" => "half",
        "4" => one ? "quarter" : "quarters",
        "8" => one ? "eighth" : "eighths",
        "16" => one ? "sixteenth" : "sixteenths",
        "32" => one ? "thirty-second" : "thirty-seconds",
        "64" => one ? "sixty-fourth" : "sixty-fourths",
        _ => "over " + under,
    };
}
