using System.Text.Json;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Files;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>
/// The one job that lies on the desk: its text as typed, what the reader and the engine make of it, and the way back. The
/// text is the truth; what cannot be read stays as it was typed and is said, and the last good plan stays in sight.
/// </summary>
internal sealed partial class JobDesk
{
    private static readonly JsonSerializerOptions s_plain = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Edits _edits = new();

    /// <summary>Something that is shown has changed: the text, what is wrong with it, the plan.</summary>
    public event EventHandler? Changed;

    /// <summary>The text was read without a fault, as the one before; a drawing of the readings may follow.</summary>
    public event EventHandler? Understood;

    /// <summary>A piece was ticked off, or its tick taken back.</summary>
    public event EventHandler? Ticked;

    /// <summary><see cref="Progress"/> has changed. It is its own event, for it comes often and little of the page shows it.</summary>
    public event EventHandler? Progressed;

    /// <summary>The job's key on this device; empty when nothing lies on the desk.</summary>
    public string Id { get; private set; } = "";

    /// <summary>Whether another tab writes this job; this one then only reads.</summary>
    public bool ReadOnly { get; private set; }

    /// <summary>The job as it stands, to be looked at; changed through <see cref="Change"/> only.</summary>
    public JsonObject Root { get; private set; } = [];

    /// <summary>The job file's text.</summary>
    public string Text => _edits.Text;

    public string Name => Root["name"]?.GetValueKind() == JsonValueKind.String ? Root["name"]!.GetValue<string>() : "";

    /// <summary>The unit lengths are typed in when they state none.</summary>
    public LengthUnit Unit => Job?.Tape.Unit ?? (string.Equals(Root["units"]?.ToString(), "in", StringComparison.Ordinal) ? LengthUnit.Inch : LengthUnit.Millimetre);

    /// <summary>The job as last read without a fault; null before that.</summary>
    public Job? Job { get; private set; }

    /// <summary>As much of the job as it stands as can be read, checked or not.</summary>
    public Job? AsFar { get; private set; }

    /// <summary>What cannot be used, each with its place in the job.</summary>
    public Sequence<FileFault> Faults { get; private set; } = [];

    /// <summary>The plan of <see cref="Job"/>; null while there is none.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>Whether <see cref="Plan"/> is that of the text as it stands.</summary>
    public bool Fresh { get; private set; }

    /// <summary>The pieces ticked off.</summary>
    public IReadOnlySet<string> Ticks => _edits.Ticks;

    /// <summary>What undo would take back; null for nothing.</summary>
    public string? Undoes => _edits.Undoes;

    /// <summary>What redo would do again; null for nothing.</summary>
    public string? Redoes => _edits.Redoes;

    /// <summary>Lays a job on the desk.</summary>
    public void Open(string id, string text, IEnumerable<string> ticks, bool readOnly)
    {
        (Id, ReadOnly) = (id, readOnly);
        (Job, Plan, Fresh) = (null, null, false);
        _readable.Clear();
        _edits.Begin(text, ticks.ToHashSet(StringComparer.Ordinal));
        Take();
    }

    /// <summary>Clears the desk.</summary>
    public void Close()
    {
        _edits.Clear();
        (Id, Job, Plan, Faults, Root, ReadOnly) = ("", null, null, [], [], false);
        _round++;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Changes the job and plans anew.</summary>
    /// <param name="what">The change in words, for undo: "width of north".</param>
    /// <param name="change">Changes the job's nodes.</param>
    /// <param name="goesOn">Whether it goes on with the last change of the same name, as typing does: undo then takes both back at once.</param>
    public void Change(string what, Action<JsonObject> change, bool goesOn = false)
    {
        if (ReadOnly || !_edits.Any) return;
        var root = (JsonObject)Root.DeepClone();
        change(root);
        var text = root.ToJsonString(s_plain) + "\n";
        if (string.Equals(text, Text, StringComparison.Ordinal)) return;
        _edits.Add(what, text, _edits.Ticks, goesOn);
        Take();
    }

    /// <summary>Sets one value of the job by its path, as faults name it: <c>faces[1].readings.width.foot</c>. Null takes it out.</summary>
    public void Set(string path, JsonNode? value, string what, bool goesOn = false) => Change(what, root => JobPath.Set(root, path, value), goesOn);

    /// <summary>Ticks a piece off, or takes the tick back.</summary>
    /// <param name="piece">The piece, as <see cref="PieceTick"/> writes it.</param>
    public void Tick(string piece)
    {
        if (ReadOnly) return;
        var name = PieceTick.Name(piece);
        var ticks = Ticks.ToHashSet(StringComparer.Ordinal);
        if (ticks.Remove(piece)) _edits.Add($"{name} not cut after all", Text, ticks);
        else
        {
            ticks.Add(piece);
            _edits.Add($"{name} cut", Text, ticks);
        }

        Ticked?.Invoke(this, EventArgs.Empty);
    }

    public void Undo()
    {
        Turn(_edits.Back);
    }

    public void Redo()
    {
        Turn(_edits.On);
    }

    /// <summary>Goes back or on. Where only a tick is taken back the plan stays.</summary>
    private void Turn(Func<bool> way)
    {
        var before = Text;
        if (ReadOnly || !way()) return;
        if (string.Equals(before, Text, StringComparison.Ordinal)) Changed?.Invoke(this, EventArgs.Empty);
        else Take();
    }

    private void Take()
    {
        Root = Parse(Text);
        Fresh = false;
        PlanAgain();
    }

    private static JsonObject Parse(string text)
    {
        try
        {
            return JsonNode.Parse(text, documentOptions: new() { AllowDuplicateProperties = false }) as JsonObject ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
