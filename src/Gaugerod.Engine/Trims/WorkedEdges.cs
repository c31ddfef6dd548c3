using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Edges at which no trim stands: the field's own tiles are mitred there, or cut back and eased. Their joints are the field's.</summary>
internal static class WorkedEdges
{
    /// <summary>The tiles to be worked, an edge at a time.</summary>
    public static IEnumerable<PlannedTrim> Of(TrimmedFace face, Func<string, TrimProduct> product) =>
        from edge in face.Face.Edges
        where edge.Trimmed is not null
        let of = product(edge.Trimmed!.Of)
        where of.IsWorked
        select Line(face, edge, of);

    /// <summary>What is asked for at such an edge and cannot be followed.</summary>
    public static void Say(TrimRemarks remarks, TrimmedFace face, FieldEdge edge)
    {
        var asked = edge.Trimmed!;
        var said = new List<string>();
        if (asked.Joints is not (TrimJoints.Free or TrimJoints.InLine)) said.Add("where joints fall");
        if (asked.Stagger is { } stagger) said.Add($"a stagger of {remarks.Say(stagger)}");
        if (asked.Left.Corner is not null || asked.Right.Corner is not null) said.Add("how it meets at a corner");
        if (said.Count == 0) return;
        // Where joints fall is asked for with almost any trim; the others are asked for on purpose.
        remarks.Add(
            said.Count == 1 && asked.Stagger is null && asked.Joints is not (TrimJoints.Free or TrimJoints.InLine) ? FindingLevel.Note : FindingLevel.Warn, "trim-worked", $"{face.Face.Name}, {edge.Name}",
            $"The edge of the field's own tiles is worked here, and {string.Join(", ", said)} was asked for: its joints are the field's, and at a corner it ends where the tiles do. Nearest: joints in line, without a stagger or a corner.");
    }

    private static PlannedTrim Line(TrimmedFace face, FieldEdge edge, TrimProduct product)
    {
        // A mitre takes the tile's thickness of its back, all along the edge; of its face nothing.
        var takes = product.Kind == TrimKind.MitredEdge ? product.Thickness : Length.Zero;
        var pieces = JointsBeside.Touching(face, edge.From, edge.To).Select(tile => new TrimPiece(
            tile.Piece.Id, Length.FromSteps(tile.From), Length.FromSteps(tile.To), PieceEnd.Factory, PieceEnd.Factory, tile.Piece.Outline)
        {
            MitreTakes = takes,
        });
        return new(
            face.Face.Name, edge.Name, product.Name, TrimJoints.InLine, edge.From, edge.To, TrimEnd.Stop, TrimEnd.Stop, Strip.LengthOf(edge), pieces.ToSequence(),
            JointsBeside.Of(face, edge.From, edge.To).Select(joint => Length.FromSteps(TrimLine.Half(joint.Middle))).ToSequence(), []);
    }
}
