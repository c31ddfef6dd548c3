using System.Text.Json;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Plans;

/// <summary>Writes a face with its field and its pieces.</summary>
internal static class FaceWriter
{
    public static void Write(Utf8JsonWriter json, FacePlan plan, TileNumbers tiles)
    {
        var face = plan.Face;
        json.WriteStartObject();
        json.WriteString("name", face.Name);
        json.WriteLength("unrolled", face.Unrolled);
        json.WriteLength("raised", face.Raised);
        if (face.LevelLine is { } line) json.WriteLength("levelLine", line);
        json.WriteStartObject("placing");
        RunWriter.WritePlacing(json, plan.Placing);
        json.WriteEndObject();
        json.WriteRing("outline", face.Outline);
        json.WriteList("openings", face.Openings, opening => json.WriteRingValue(opening.Ring));
        json.WriteNames("openingNames", face.Openings.Select(o => o.Name));
        json.WriteList("holes", face.Holes, hole => WriteHole(json, hole));
        json.WriteStartArray("field");
        WriteArea(json, face.Field);
        json.WriteEndArray();
        json.WriteList("edges", face.Edges, edge => WriteEdge(json, edge));
        json.WriteList("pieces", plan.Pieces, piece => WritePiece(json, piece, tiles));
        json.WriteEndObject();
    }

    private static void WriteHole(Utf8JsonWriter json, Hole hole)
    {
        json.WriteStartObject();
        json.WriteString("name", hole.Name);
        json.WriteLength("x", hole.Centre.X);
        json.WriteLength("y", hole.Centre.Y);
        json.WriteLength("diameter", hole.Diameter);
        json.WriteEndObject();
    }

    private static void WriteArea(Utf8JsonWriter json, Polygon area)
    {
        json.WriteStartObject();
        json.WriteRing("outer", area.Outer);
        json.WriteRings("inner", area.Inner);
        json.WriteEndObject();
    }

    private static void WriteEdge(Utf8JsonWriter json, FieldEdge edge)
    {
        json.WriteStartObject();
        json.WriteString("name", edge.Name);
        json.WriteString("kind", edge.Kind == EdgeKind.Zone ? "zone" : Words.EdgeKinds.Say(edge.Kind));
        json.WritePoint("from", edge.From);
        json.WritePoint("to", edge.To);
        json.WriteEndObject();
    }

    private static void WritePiece(Utf8JsonWriter json, Piece piece, TileNumbers tiles)
    {
        var tile = tiles.Of(piece);
        json.WriteStartObject();
        json.WriteString("id", piece.Id);
        json.WriteString("kind", PieceWords.Of(piece.Kind));
        json.WriteRing("outline", piece.Outline);
        json.WriteRings("inner", piece.Inner);
        json.WriteNumber("course", piece.Course);
        json.WriteNumber("column", piece.Column);
        json.WriteString("product", piece.Product);
        json.WriteLength("width", piece.Width);
        json.WriteLength("height", piece.Height);
        json.WriteLength("smallest", piece.Smallest);
        if (tile is { } known) json.WriteNumber("tile", known.Number);
        else json.WriteNull("tile");
        json.WriteBoolean("turned", tile is { Turned: not 0 });
        if (piece.GrainOnFace is { } grain) json.WriteNumber("grain", grain.Degrees);
        json.WriteRing("cell", piece.Laid);
        json.WriteList("cuts", piece.Cuts, cut => WriteCut(json, cut));
        json.WriteEndObject();
    }

    private static void WriteCut(Utf8JsonWriter json, CutMark cut)
    {
        json.WriteStartObject();
        json.WriteString("away", cut.Away switch { TileSide.Left => "left", TileSide.Right => "right", TileSide.Bottom => "bottom", _ => "top" });
        json.WriteLength("first", cut.First);
        json.WriteLength("last", cut.Last);
        json.WriteLength("from", cut.From);
        json.WriteLength("to", cut.To);
        json.WriteString("faces", cut.Faces);
        json.WriteEndObject();
    }
}
