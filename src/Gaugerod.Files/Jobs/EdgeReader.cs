using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads an edge: what the file says, over what is usual at that place.</summary>
internal static class EdgeReader
{
    /// <summary>The edge; an edge of another kind than the usual one starts afresh.</summary>
    public static Edge Read(Entry? entry, Form form, Edge usual, Values values)
    {
        if (Fields.Open(entry, form, values) is not { } fields) return usual;
        var said = values.Word(fields["kind"], Words.EdgeKinds);
        var kind = said ?? usual.Kind;
        var basis = kind == usual.Kind ? usual : new Edge(usual.Name, kind);
        var (trim, trimmed) = TrimReader.AtEdge(fields, basis);
        var edge = basis with
        {
            Joint = fields.Length("joint", LengthRange.Joint) ?? basis.Joint,
            Trim = trim,
            Trimmed = trimmed,
            Cover = fields.Length("cover", LengthRange.Strip) ?? basis.Cover,
            Lap = fields.Word("lap", Words.Laps, basis.Lap),
            IsSealed = values.Truth(fields["sealed"]) ?? basis.IsSealed,
            Finish = values.Word(fields["finish"], Words.Finishes) ?? basis.Finish,
        };

        // A kind that could not be read is not blamed on the fields beside it.
        if (said is not null || fields["kind"] is null) CheckKind(fields, edge);
        return edge;
    }

    private static void CheckKind(Fields fields, Edge edge)
    {
        if (edge.Kind == EdgeKind.OutsideCorner && edge.Finish is null && fields["finish"] is null)
        {
            fields.Missing("finish", Values.OneOf(Words.Finishes.All) + ", which an outside corner needs");
        }

        Only(fields, edge, "finish", EdgeKind.OutsideCorner);
        Only(fields, edge, "lap", EdgeKind.InsideCorner);
        if (edge.Trim > Length.Zero || edge.Trimmed is not null) Only(fields, edge, "trim", EdgeKind.Free, EdgeKind.OutsideCorner);

        // There the tiles' own rounded sides run to the corner: a strip of trim would stand off the wall.
        if (edge is { Kind: EdgeKind.OutsideCorner, Finish: CornerFinish.BullnoseOver, Trimmed: not null } && fields["trim"] is { } strip)
        {
            fields.Values.Log.AddSaid(strip, "a trim at a corner whose finish is \"bullnose over\"", "it only where a strip stands on the corner", "leave it out, or say the finish \"profile\"");
        }
    }

    private static void Only(Fields fields, Edge edge, string name, params EdgeKind[] kinds)
    {
        if (fields[name] is not { } entry || kinds.Contains(edge.Kind)) return;
        var where = string.Join(" or ", kinds.Select(k => $"\"{Words.EdgeKinds.Say(k)}\""));
        fields.Values.Log.AddSaid(entry, $"\"{name}\" at an edge of kind \"{Words.EdgeKinds.Say(edge.Kind)}\"", $"it only at kind {where}", "leave it out, or change the kind");
    }
}
