using System.Text.Json;
using Gaugerod.Engine.Trims;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes a line of trim with its pieces, and other ways to put its joints.</summary>
internal static class TrimWriter
{
    private static readonly Words<TrimEnd> s_ends = new(
        ("stop", TrimEnd.Stop), ("covers", TrimEnd.Covers), ("hidden", TrimEnd.Hidden), ("butts", TrimEnd.Butts), ("mitre", TrimEnd.Mitre), ("corner piece", TrimEnd.CornerPiece), ("stop piece", TrimEnd.StopPiece));

    private static readonly Words<PieceEnd> s_pieceEnds = new(("factory", PieceEnd.Factory), ("sawn", PieceEnd.Sawn), ("mitred", PieceEnd.Mitred));

    private static readonly Words<CornerPieceKind> s_kinds = new(("outside", CornerPieceKind.Outside), ("inside", CornerPieceKind.Inside), ("stop", CornerPieceKind.Stop));

    private static readonly Words<MitreHand> s_hands = new(("left", MitreHand.Left), ("right", MitreHand.Right), ("both", MitreHand.Both));

    public static void Write(Utf8JsonWriter json, PlannedTrim line)
    {
        json.WriteStartObject();
        json.WriteString("face", line.Face);
        json.WriteString("edge", line.Edge);
        json.WriteString("product", line.Product);
        json.WriteString("joints", Words.TrimJoints.Say(line.Joints));
        json.WritePoint("from", line.From);
        json.WritePoint("to", line.To);
        json.WriteString("begin", s_ends.Say(line.Begin));
        json.WriteString("end", s_ends.Say(line.End));
        json.WriteLength("length", line.Length);
        WriteCorner(json, "atBegin", line.AtBegin);
        WriteCorner(json, "atEnd", line.AtEnd);
        json.WriteLengths("beside", line.Beside);
        json.WriteList("pieces", line.Pieces, piece => WritePiece(json, piece));
        json.WriteList("returns", line.Returns, piece => WriteReturn(json, piece));
        json.WriteList("ways", line.Ways, way => WriteWay(json, way));
        json.WriteEndObject();
    }

    private static void WritePiece(Utf8JsonWriter json, TrimPiece piece)
    {
        json.WriteStartObject();
        json.WriteString("id", piece.Id);
        json.WriteLength("from", piece.From);
        json.WriteLength("to", piece.To);
        json.WriteLength("length", piece.Length);
        json.WriteString("begin", s_pieceEnds.Say(piece.Begin));
        json.WriteString("end", s_pieceEnds.Say(piece.End));
        json.WriteString("hand", piece.Hand is { } hand ? s_hands.Say(hand) : null);
        json.WriteLength("mitreTakes", piece.MitreTakes);
        json.WriteNumber("stock", piece.Stock);
        json.WriteRing("outline", piece.Outline);
        json.WriteEndObject();
    }

    private static void WriteCorner(Utf8JsonWriter json, string name, CornerPiece? piece)
    {
        if (piece is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("id", piece.Id);
        json.WriteString("kind", s_kinds.Say(piece.Kind));
        json.WriteLength("reach", piece.Reach);
        json.WriteList("parts", piece.Parts, part =>
        {
            json.WriteStartObject();
            json.WriteString("face", part.Face);
            json.WriteRing("outline", part.Outline);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void WriteReturn(Utf8JsonWriter json, TrimReturn piece)
    {
        json.WriteStartObject();
        json.WriteString("id", piece.Id);
        json.WriteString("at", piece.AtLeft ? "end" : "begin");
        json.WriteLength("length", piece.Length);
        json.WriteString("hand", s_hands.Say(piece.Hand));
        json.WriteLength("mitreTakes", piece.MitreTakes);
        json.WriteNumber("stock", piece.Stock);
        json.WriteEndObject();
    }

    private static void WriteWay(Utf8JsonWriter json, TrimWay way)
    {
        json.WriteStartObject();
        json.WriteString("joints", Words.TrimJoints.Say(way.Joints));
        json.WriteNumber("cuts", way.Cuts);
        json.WriteNumber("trimmed", way.Trimmed);
        json.WriteLengths("lengths", way.Lengths);
        json.WriteLength("stagger", way.Stagger);
        json.WriteString("why", way.Why);
        json.WriteEndObject();
    }
}
