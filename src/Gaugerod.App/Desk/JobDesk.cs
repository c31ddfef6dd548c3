using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Files;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>
/// The one job that lies on the desk: its text as typed, what the reader and the engine make of it, and the way back. The
/// text is the truth; what cannot be read stays as it was typed and is said, and the last good plan stays in sight.
/// </summary>
internal sealed class JobDesk
{
    private static readonly JsonSerializerOptions s_plain = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>So long the planning works before the page may draw, in milliseconds: half a frame.</summary>
    private const int Slice = 8;

    /// <summary>Planning that takes longer than this is shown, in milliseconds.</summary>
    private const int Worth = 500;

    private readonly List<Edit> _edits = [];
    private int _at = -1;
    private int _round;

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
    public string Text => _at < 0 ? "" : _edits[_at].Text;

    public string Name => Root["name"]?.GetValueKind() == JsonValueKind.String ? Root["name"]!.GetValue<string>() : "";

    /// <summary>The unit lengths are typed in when they state none.</summary>
    public LengthUnit Unit => Job?.Tape.Unit ?? (string.Equals(Root["units"]?.ToString(), "in", StringComparison.Ordinal) ? LengthUnit.Inch : LengthUnit.Millimetre);

    /// <summary>The job as last read without a fault; null before that.</summary>
    public Job? Job { get; private set; }

    /// <summary>What cannot be used, each with its place in the job.</summary>
    public Sequence<FileFault> Faults { get; private set; } = [];

    /// <summary>The plan of <see cref="Job"/>; null while there is none.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>Whether <see cref="Plan"/> is that of the text as it stands.</summary>
    public bool Fresh { get; private set; }

    /// <summary>How far the planning is, in words; empty when it rests.</summary>
    public string Progress { get; private set; } = "";

    /// <summary>Whether the planning takes long enough to be worth a word: what comes at once need not be announced.</summary>
    public bool Slow { get; private set; }

    /// <summary>What the planning itself fell over, an error of ours; empty when it did not.</summary>
    public string Broken { get; private set; } = "";

    /// <summary>Whether a person stopped the planning before it was done.</summary>
    public bool Stopped { get; private set; }

    /// <summary>The pieces ticked off.</summary>
    public HashSet<string> Ticks { get; } = new(StringComparer.Ordinal);

    /// <summary>What undo would take back; null for nothing.</summary>
    public string? Undoes => _at > 0 ? _edits[_at].What : null;

    /// <summary>What redo would do again; null for nothing.</summary>
    public string? Redoes => _at + 1 < _edits.Count ? _edits[_at + 1].What : null;

    /// <summary>Lays a job on the desk.</summary>
    public void Open(string id, string text, IEnumerable<string> ticks, bool readOnly)
    {
        (Id, ReadOnly) = (id, readOnly);
        Ticks.Clear();
        Ticks.UnionWith(ticks);
        _edits.Clear();
        (_at, Job, Plan, Fresh) = (-1, null, null, false);
        _edits.Add(new("opened", text));
        _at = 0;
        Take();
    }

    /// <summary>Clears the desk.</summary>
    public void Close()
    {
        _edits.Clear();
        (Id, _at, Job, Plan, Faults, Root, ReadOnly) = ("", -1, null, null, [], [], false);
        _round++;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Changes the job and plans anew.</summary>
    /// <param name="what">The change in words, for undo: "width of north".</param>
    /// <param name="change">Changes the job's nodes.</param>
    /// <param name="goesOn">Whether it goes on with the last change of the same name, as typing does: undo then takes both back at once.</param>
    public void Change(string what, Action<JsonObject> change, bool goesOn = false)
    {
        if (ReadOnly || _at < 0) return;
        var root = (JsonObject)Root.DeepClone();
        change(root);
        var text = root.ToJsonString(s_plain) + "\n";
        if (string.Equals(text, Text, StringComparison.Ordinal)) return;
        _edits.RemoveRange(_at + 1, _edits.Count - _at - 1);
        if (goesOn && string.Equals(Undoes, what, StringComparison.Ordinal)) _edits[_at] = new(what, text);
        else
        {
            _edits.Add(new(what, text));
            _at++;
        }

        Take();
    }

    /// <summary>Sets one value of the job by its path, as faults name it: <c>faces[1].readings.width.foot</c>. Null takes it out.</summary>
    public void Set(string path, JsonNode? value, string what, bool goesOn = false) => Change(what, root => JobPath.Set(root, path, value), goesOn);

    /// <summary>Ticks a piece off, or takes the tick back.</summary>
    public void Tick(string piece)
    {
        if (ReadOnly) return;
        if (!Ticks.Remove(piece)) Ticks.Add(piece);
        Ticked?.Invoke(this, EventArgs.Empty);
    }

    public void Undo()
    {
        if (Undoes is null || ReadOnly) return;
        _at--;
        Take();
    }

    public void Redo()
    {
        if (Redoes is null || ReadOnly) return;
        _at++;
        Take();
    }

    /// <summary>Leaves the planning; the plan before the last change stays in sight.</summary>
    public void Stop()
    {
        _round++;
        (Stopped, Progress) = (true, "");
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Plans the job as it stands, from the beginning.</summary>
    public void PlanAgain()
    {
        (Stopped, Slow, Broken) = (false, false, "");
        Changed?.Invoke(this, EventArgs.Empty);
        _ = PlanSoonAsync();
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

    /// <summary>Plans soon. Nobody waits for it, so what goes wrong in it is said here or nowhere.</summary>
    private async Task PlanSoonAsync()
    {
        var round = ++_round;
        try
        {
            await PlanAsync(round);
        }
        catch (Exception trouble) when (round == _round)
        {
            (Broken, Progress) = (trouble.Message, "");
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    /// <summary>Reads and plans when the typing rests, a step at a time so that the page stays quick; a later change takes over.</summary>
    private async Task PlanAsync(int round)
    {
        await Task.Delay(60);
        if (round != _round) return;
        var before = Faults;
        (Faults, var job) = Read(Text);
        if (job is null)
        {
            Progress = "";
            Changed?.Invoke(this, EventArgs.Empty);
            return;
        }

        var first = Job is null;
        Job = job;
        if (first || !before.Equals(Faults)) Changed?.Invoke(this, EventArgs.Empty);
        else Understood?.Invoke(this, EventArgs.Empty);
        var (all, since) = (Stopwatch.StartNew(), Stopwatch.StartNew());
        foreach (var step in Planner.Steps(job))
        {
            if (step.Plan is { } plan) (Plan, Fresh, Progress) = (plan, true, "");
            else if (since.ElapsedMilliseconds < Slice) continue;
            else if (all.ElapsedMilliseconds > Worth && !ReferenceEquals(Progress, step.Text))
            {
                (Slow, Progress) = (true, step.Text);
                Progressed?.Invoke(this, EventArgs.Empty);
            }

            await Task.Delay(1);
            if (round != _round) return;
            since.Restart();
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>The job that a text holds; null when something of it cannot be used.</summary>
    internal static (Sequence<FileFault> Faults, Job? Job) Read(string text)
    {
        switch (JobReader.Read(Encoding.UTF8.GetBytes(text), "this job"))
        {
            case JobReading.Refused refused:
                return (refused.Faults, null);
            case JobReading.Understood read:
                var faults = JobCheck.Check(read.Job).Select(read.Locate).ToSequence();
                return (faults, faults.Count == 0 ? read.Job : null);
            default:
                return ([], null);
        }
    }

    private sealed record Edit(string What, string Text);
}
