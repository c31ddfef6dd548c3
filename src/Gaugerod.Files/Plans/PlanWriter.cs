using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes plan.json, the contract for other programs.</summary>
public static class PlanWriter
{
    /// <summary>The plan as JSON in UTF-8 without a mark, lines ended by a line feed. Lengths are millimetres, exactly; the same plan gives the same bytes.</summary>
    public static byte[] Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var buffer = new ArrayBufferWriter<byte>();

        // The looser encoder leaves inch marks and fractions readable; the file is no part of a web page.
        var options = new JsonWriterOptions { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            Write(json, plan);
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    private static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject();
        json.WriteString("format", "gaugerod-plan/1");
        WriteJob(json, plan.Job);
        json.WriteList("surveys", plan.Surveys, survey => SurveyWriter.Write(json, survey));
        var tiles = new TileNumbers(plan.Cutting);
        json.WriteList("runs", plan.Runs, run => RunWriter.Write(json, run, tiles));
        CuttingWriter.Write(json, plan);
        json.WriteList("trim", plan.Trims.Lines, line => TrimWriter.Write(json, line));
        PrepWriter.Write(json, plan);
        json.WriteList("takeoff", plan.Order, line => OrderWriter.Write(json, line));
        json.WriteList("supplies", plan.Supplies, line => SupplyWriter.Write(json, line));

        if (plan.Movement.Count > 0) json.WriteList("movementJoints", plan.Movement, joint => MovementWriter.Write(json, joint));

        if (plan.Again.Count > 0)
        {
            json.WriteList("again", plan.Again, face => AgainWriter.Write(json, face));
            json.WriteList("againTiles", plan.AgainOrders, order => AgainWriter.Write(json, order));
        }

        PriceWriter.Write(json, plan.Price);
        json.WriteList("sequence", plan.Work?.Tasks ?? [], task => SequenceWriter.Write(json, task));
        HandOverWriter.Write(json, plan);
        json.WriteList("findings", plan.Findings, finding => FindingWriter.Write(json, finding));
        json.WriteEndObject();
    }

    private static void WriteJob(Utf8JsonWriter json, Job job)
    {
        json.WriteStartObject("job");
        json.WriteString("name", job.Name);
        json.WriteString("note", job.Note);
        json.WriteString("units", Words.Units.Say(job.Tape.Unit));
        json.WriteLength("tape", job.Tape.Mark);
        json.WriteString("paper", Words.Papers.Say(job.Paper));
        if (job.Region is { } region) json.WriteString("region", Words.Regions.Say(region));
        json.WriteLength("edgeJoint", job.EdgeJoint);
        json.WriteEndObject();
    }
}
