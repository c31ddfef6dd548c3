using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what becomes of the rest of a face when what is set was measured again.</summary>
internal static class AgainWriter
{
    public static void Write(Utf8JsonWriter json, AgainFace face)
    {
        json.WriteStartObject();
        json.WriteString("run", face.Run);
        json.WriteString("face", face.Face);
        json.WriteNumber("from", face.From);
        json.WriteNumber("courses", face.Courses);
        json.WriteLength("offLeft", face.OffLeft);
        json.WriteLength("offRight", face.OffRight);
        json.WriteList("ways", face.Ways, way => Write(json, way));
        json.WriteList("cut", face.Cut, cut =>
        {
            json.WriteStartObject();
            json.WriteString("piece", cut.Piece);
            json.WriteBoolean("fits", cut.Fits);
            json.WriteString("goes", cut.Goes);
            json.WriteString("text", cut.Words);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    public static void Write(Utf8JsonWriter json, AgainOrder order)
    {
        json.WriteStartObject();
        json.WriteString("product", order.Product);
        json.WriteNumber("needed", order.Needed);
        json.WriteNumber("left", order.Left);
        json.WriteNumber("short", order.Short);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, AgainWay way)
    {
        json.WriteStartObject();
        json.WriteString("text", way.Words);
        json.WriteLength("joint", way.Joint);
        if (way.BackAt is { } back) json.WriteNumber("backAt", back);
        else json.WriteNull("backAt");
        json.WriteNames("changed", way.Changed);
        json.WriteNumber("mustsMissed", way.MustsMissed);
        json.WriteNumber("wishesMissed", way.WishesMissed);
        json.WriteNames("missed", way.Missed);
        json.WriteList("marks", way.Marks, mark =>
        {
            json.WriteStartObject();
            json.WriteNumber("course", mark.Course);
            json.WriteLength("planned", mark.Planned);
            json.WriteLength("left", mark.Left);
            json.WriteLength("right", mark.Right);
            json.WriteEndObject();
        });
        json.WriteList("pieces", way.Pieces.Where(piece => piece.Kind != PieceKind.Full), piece =>
        {
            json.WriteStartObject();
            json.WriteString("id", piece.Id);
            json.WriteNumber("course", piece.Course);
            json.WriteRing("outline", piece.Outline);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }
}
