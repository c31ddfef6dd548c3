using System.Globalization;
using System.Text.Json;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes a task of the order of work.</summary>
internal static class SequenceWriter
{
    public static void Write(Utf8JsonWriter json, WorkTask task)
    {
        json.WriteStartObject();
        json.WriteString("task", task.Name);
        json.WriteString("kind", Kind(task.Kind));
        json.WriteString("run", task.Run);
        json.WriteNames("faces", task.Faces);
        json.WriteString("stage", task.Stage == SetStage.None ? null : Words.Stages.Say(task.Stage));
        json.WriteList("amounts", task.Amounts, amount => Write(json, amount));
        if (task.Minutes is { } minutes) json.WriteNumber("minutes", minutes);
        else json.WriteNull("minutes");
        json.WriteNumber("hands", task.Hands);
        json.WriteString("begins", Said(task.Begins));
        json.WriteString("ends", Said(task.Ends));
        json.WriteList("days", task.Days, day => Between(json, day.Begins, day.Ends));
        json.WriteList("waits", task.Waits, wait => Write(json, wait));
        json.WriteNames("beside", task.Beside);
        json.WriteNames("pieces", task.Pieces);
        json.WriteList("mixes", task.Batches, batch => Write(json, batch));
        if (task.Ahead is { } ahead) json.WriteNumber("ahead", ahead);
        json.WriteEndObject();
    }

    private static string Kind(WorkKind kind) => Words.PaceFields.FirstOrDefault(field => field.Kind == kind).Field ?? kind switch
    {
        WorkKind.Arrival => "arrival",
        WorkKind.FirstUse => "firstUse",
        _ => "own",
    };

    private static void Write(Utf8JsonWriter json, WorkAmount amount)
    {
        json.WriteStartObject();
        json.WriteString("unit", Words.PaceUnits.Say(amount.Unit));
        json.WriteNumber("amount", Math.Round(amount.Amount, 3));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WorkWait wait)
    {
        json.WriteStartObject();
        json.WriteString("for", wait.Task);
        json.WriteString("hold", wait.Hold is null ? null : HoldWords.Of(wait.Hold.Value));
        json.WriteNumber("minutes", wait.Minutes);
        json.WriteString("by", Words.HoldsFrom.Say(wait.From));
        json.WriteString("product", wait.Product);
        json.WriteString("until", Said(wait.Until));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Batch batch)
    {
        json.WriteStartObject();
        json.WriteNumber("mix", batch.Number);
        json.WriteString("begins", Said(batch.Begins));
        json.WriteString("ends", Said(batch.Ends));
        json.WriteNumber("pieces", batch.Pieces);
        json.WriteNumber("litres", Math.Round(batch.Litres, 3));
        json.WriteNumber("packs", Math.Round(batch.Packs, 3));
        json.WriteList("courses", batch.Courses, course => Write(json, course));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BatchCourse course)
    {
        json.WriteStartObject();
        if (course.Face is { } face) json.WriteString("face", face);
        json.WriteNumber("course", course.Course);
        json.WriteNumber("first", course.First);
        json.WriteNumber("last", course.Last);
        json.WriteNumber("of", course.Of);
        json.WriteEndObject();
    }

    private static void Between(Utf8JsonWriter json, DateTime begins, DateTime ends)
    {
        json.WriteStartObject();
        json.WriteString("begins", Said(begins));
        json.WriteString("ends", Said(ends));
        json.WriteEndObject();
    }

    private static string? Said(DateTime? moment) => moment?.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
}
