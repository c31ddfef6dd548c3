using System.Text.Json;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes a run: where it starts, why, and what it looks like.</summary>
internal static class RunWriter
{
    public static void Write(Utf8JsonWriter json, RunPlan run, TileNumbers tiles)
    {
        json.WriteStartObject();
        json.WriteString("name", run.Request.Name);
        json.WriteString("product", run.Request.Product);
        BondWriter.Write(json, run.Request.Bond);
        json.WriteString("corners", Words.CornerWays.Say(run.Request.Corners));
        json.WriteString("through", run.Request.Through);
        json.WriteLength("joint", run.Best.Placing.Joint);
        WriteJointRange(json, run.Request.Joint);
        WriteLimits(json, run.Request.Limits);
        json.WriteNames("order", run.Request.Order.Select(Words.Criteria.Say));
        WriteProposal(json, run.Best);
        WriteProof(json, run.Proof);
        json.WriteList("alternatives", run.Alternatives, other =>
        {
            json.WriteStartObject();
            WriteProposal(json, other);
            json.WriteEndObject();
        });
        json.WriteList("lines", run.Lines, line => WriteLine(json, line));
        json.WriteList("rods", run.Rods, rod => WriteRod(json, rod));
        if (run.Turned.Count > 0) json.WriteList("turnedLines", run.Turned, line => WriteTurned(json, line));
        json.WriteList("ranges", run.Ranges, range => WriteRange(json, range));
        json.WriteList("faces", run.Faces, face => FaceWriter.Write(json, face, tiles));
        json.WriteEndObject();
    }

    /// <summary>A placing; the angle is how far the bond is turned about it.</summary>
    public static void WritePlacing(Utf8JsonWriter json, Placing placing)
    {
        json.WriteLength("x", placing.X);
        json.WriteLength("y", placing.Y);
        json.WriteNumber("angle", placing.Turn.Degrees);
        json.WriteLength("joint", placing.Joint);
    }

    private static void WriteRange(Utf8JsonWriter json, CutRange range)
    {
        json.WriteStartObject();
        json.WriteString("face", range.Face);
        json.WriteString("edge", range.Edge);
        json.WriteLength("smallest", range.Smallest);
        json.WriteNumber("tiles", range.Tiles);
        json.WriteLength("giveOrTake", range.GiveOrTake);
        json.WriteLength("atWorst", range.AtWorst);
        json.WriteEndObject();
    }

    private static void WriteJointRange(Utf8JsonWriter json, JointRange joint)
    {
        json.WriteStartObject("jointRange");
        json.WriteLength("least", joint.Least);
        json.WriteLength("wanted", joint.Wanted);
        json.WriteLength("most", joint.Most);
        json.WriteEndObject();
    }

    private static void WriteLimits(Utf8JsonWriter json, Limits limits)
    {
        json.WriteStartObject("limits");
        json.WriteLength("smallest", limits.Smallest);
        json.WriteLength("sliver", limits.Sliver);
        json.WriteBoolean("halfTile", limits.HalfTile);
        if (limits.AtWorst) json.WriteString("cuts", Words.CutsCompared.Say(true));
        json.WriteEndObject();
    }

    private static void WriteProposal(Utf8JsonWriter json, Proposal proposal)
    {
        json.WriteStartObject("placing");
        WritePlacing(json, proposal.Placing);
        json.WriteEndObject();
        json.WriteStartObject("score");
        json.WriteLength("smallestCut", proposal.Score.SmallestCut);
        if (proposal.Score.AtWorst is { } worst) json.WriteLength("atWorst", worst);
        json.WriteNumber("slivers", proposal.Score.Slivers);
        json.WriteNumber("cuts", proposal.Score.Cuts);
        json.WriteNumber("tilesBought", proposal.Score.Tiles);
        json.WriteNumber("wantsMissed", proposal.Score.WantsMissed);
        json.WriteNumber("mustsMissed", proposal.Score.MustsMissed);
        json.WriteNumber("wishesMissed", proposal.Score.WishesMissed);
        json.WriteLength("mirror", proposal.Score.Mirror);
        json.WriteEndObject();
        json.WriteString("why", proposal.Why);
        json.WriteList("placings", proposal.Faces, placing =>
        {
            json.WriteStartObject();
            WritePlacing(json, placing);
            json.WriteEndObject();
        });
        json.WriteList("wants", proposal.Wants, outcome => WantWriter.Write(json, outcome));
    }

    private static void WriteProof(Utf8JsonWriter json, Proof proof)
    {
        json.WriteStartObject("proof");
        json.WriteString("kind", proof.Kind switch { ProofKind.Exact => "exact", ProofKind.Bounded => "bounded", _ => "none" });
        json.WriteLength("bound", proof.Bound);
        json.WriteNumber("examined", proof.Examined);
        json.WriteString("words", proof.Words);
        json.WriteEndObject();
    }

    private static void WriteLine(Utf8JsonWriter json, SnapLine line)
    {
        json.WriteStartObject();
        json.WriteString("axis", Axis(line.Axis));
        json.WriteString("face", line.Face);
        json.WriteLength("at", line.At);
        json.WriteString("why", line.Why);
        json.WriteEndObject();
    }

    private static void WriteRod(Utf8JsonWriter json, Rod rod)
    {
        json.WriteStartObject();
        json.WriteString("axis", Axis(rod.Axis));
        json.WriteString("face", rod.Face);
        json.WriteString("from", rod.From);
        json.WriteLength("start", rod.Start);
        json.WriteLengths("marks", rod.Marks);
        json.WriteEndObject();
    }

    private static void WriteTurned(Utf8JsonWriter json, TurnedLine line)
    {
        json.WriteStartObject();
        json.WriteString("face", line.Face);
        json.WritePoint("from", line.From);
        json.WritePoint("through", line.Through);
        json.WritePoint("to", line.To);
        json.WriteLengths("marks", line.Marks);
        json.WriteString("why", line.Why);
        json.WriteEndObject();
    }

    private static string Axis(Axis axis) => axis == Engine.Lines.Axis.Level ? "level" : "plumb";
}
