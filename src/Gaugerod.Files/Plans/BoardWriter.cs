using System.Text.Json;
using Gaugerod.Engine.Boards;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Plans;

/// <summary>Writes the sheets of board under the tile.</summary>
internal static class BoardWriter
{
    public static void Write(Utf8JsonWriter json, BoardPlan plan)
    {
        json.WriteStartObject("boards");
        json.WriteList("faces", plan.Faces, face => Write(json, face));
        json.WriteList("stocks", plan.Stocks, stock => Write(json, stock));
        json.WriteLength("corners", plan.Corners);
        json.WriteLength("tape", plan.Tape);
        json.WriteNumber("screws", plan.Screws);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BoardedFace face)
    {
        json.WriteStartObject();
        json.WriteString("face", face.Face);
        json.WriteString("product", face.Product.Name);
        json.WriteString("lay", Words.BoardLays.Say(face.Lay));
        json.WriteLengths("studs", face.Studs);
        json.WriteList("pieces", face.Pieces, piece => Write(json, piece));
        json.WriteList("seams", face.Seams, seam => Write(json, seam));
        if (face.Niches.Count > 0) json.WriteList("niches", face.Niches, niche => Write(json, niche));
        json.WriteNumber("area", Math.Round(face.Area));
        json.WriteLength("seamLength", face.SeamLength);
        json.WriteNumber("screws", face.Screws);
        json.WriteNumber("atCorners", face.AtCorners);
        json.WriteNumber("inLine", face.InLine);
        json.WriteNumber("narrow", face.Narrow);
        json.WriteLength("underJoints", face.Under);
        json.WriteBoolean("best", face.IsBest);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BoardPiece piece)
    {
        json.WriteStartObject();
        json.WriteString("id", piece.Id);
        json.WriteNumber("row", piece.Row);
        json.WriteRing("outline", piece.Shape.Outer);
        json.WriteRings("inner", piece.Shape.Inner);
        json.WriteLength("along", piece.Along);
        json.WriteLength("across", piece.Across);
        json.WriteBoolean("whole", piece.IsWhole);
        json.WriteNumber("sheet", piece.Sheet);
        json.WriteNumber("screws", piece.Screws.Count);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, NicheBoards niche)
    {
        json.WriteStartObject();
        json.WriteString("opening", niche.Opening);
        json.WriteLength("depth", niche.Depth);
        json.WriteLength("seams", niche.Seams);
        json.WriteList("pieces", niche.Pieces, piece =>
        {
            json.WriteStartObject();
            json.WriteString("id", piece.Id);
            json.WriteString("part", Words.NicheParts.Say(piece.Part));
            json.WriteLength("along", piece.Along);
            json.WriteLength("across", piece.Across);
            json.WriteNumber("sheet", piece.Sheet);
            json.WriteNumber("screws", piece.Screws);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BoardSeam seam)
    {
        json.WriteStartObject();
        json.WritePoint("from", seam.From);
        json.WritePoint("to", seam.To);
        json.WriteBoolean("stud", seam.OnStud);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BoardStock stock)
    {
        json.WriteStartObject();
        json.WriteString("product", stock.Product);
        json.WriteNumber("bought", stock.Sheets.Count);
        json.WriteNumber("lowerBound", stock.LowerBound);
        json.WriteList("sheets", stock.Sheets, sheet =>
        {
            json.WriteStartObject();
            json.WriteNumber("number", sheet.Number);
            json.WriteList("pieces", sheet.Pieces, piece =>
            {
                json.WriteStartObject();
                json.WriteString("id", piece.Id);
                json.WriteRing("at", Ring.Of(piece.At));
                json.WriteEndObject();
            });
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }
}
