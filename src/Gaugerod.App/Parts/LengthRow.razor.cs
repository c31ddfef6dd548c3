using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Parts;

/// <summary>
/// A row of lengths in a table, each as a person types it: a grid of readings has hundreds, which as fields of their own would
/// make the page slow. Drawn again only when something of the row has changed.
/// </summary>
public sealed partial class LengthRow : Still
{
    // As a length's own field: planning does not begin between two keys.
    private static readonly TimeSpan s_rest = TimeSpan.FromMilliseconds(220);

    private string[] _texts = [];
    private string[] _kept = [];
    private string _at = "";
    private int _round;
    private bool _goesOn;

    /// <summary>What stands before it.</summary>
    [Parameter, EditorRequired]
    public string Head { get; set; } = "";

    /// <summary>The places of the lengths in the job.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<string> Paths { get; set; } = [];

    /// <summary>What each is called, for who does not see the table, and where something is said of one.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<string> Labels { get; set; } = [];

    /// <summary>What they are lengths of, whose own faults are said here too; empty for nothing.</summary>
    [Parameter]
    public string Group { get; set; } = "";

    /// <summary>Takes what was understood of the length typed last.</summary>
    [Parameter]
    public Action<string>? Say { get; set; }

    /// <summary>Called by a key behind the row that takes it out; null for no such key.</summary>
    [Parameter]
    public Action? Drop { get; set; }

    /// <summary>What that key takes out.</summary>
    [Parameter]
    public string DropLabel { get; set; } = "";

    /// <inheritdoc />
    protected override object Seen => (Head, Written(Paths), Written(Labels), Written(_texts), Written(Enumerable.Range(0, Paths.Count).SelectMany(Trouble).Concat(OfAll)), (Desk.ReadOnly, Desk.Unit));

    private string Keys => Desk.Unit == LengthUnit.Inch ? "text" : "decimal";

    private Tape Tape => Desk.Job is { } job && job.Tape.Unit == Desk.Unit ? job.Tape : Desk.Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        var all = string.Join('\n', Paths);
        if (!string.Equals(all, _at, StringComparison.Ordinal)) (_at, _texts, _kept) = (all, new string[Paths.Count], new string[Paths.Count]);
        for (var i = 0; i < Paths.Count; i++)
        {
            var now = FieldId.Text(Desk, Paths[i]);
            if (!string.Equals(now, _kept[i], StringComparison.Ordinal)) (_texts[i], _kept[i]) = (now, now);
        }
    }

    private IEnumerable<string> Trouble(int at) =>
        _texts[at].Trim().Length == 0 ? []
        : LengthText.Read(_texts[at], Desk.Unit) is LengthReading.Refused refused ? [$"not read: expected {refused.Expected}."]
        : string.Equals(_texts[at], _kept[at], StringComparison.Ordinal) ? Unread.Wrong(Desk, Paths[at]).Select(FieldId.Say) : [];

    private IEnumerable<string> OfAll => Group.Length == 0 ? [] : Unread.Wrong(Desk, Group).Where(fault => !Paths.Any(path => FieldId.Holds(path, fault.Path))).Select(FieldId.Say);

    private void Enter(int at)
    {
        _goesOn = false;
        Understand(at);
    }

    private async Task TypedAsync(int at, ChangeEventArgs change)
    {
        _texts[at] = change.Value?.ToString() ?? "";
        Understand(at);
        var (round, paths) = (++_round, _at);
        await Task.Delay(s_rest);
        if (round == _round && string.Equals(paths, _at, StringComparison.Ordinal)) Flush(at);
    }

    private void Flush(int at)
    {
        _round++;
        if (at >= _texts.Length || string.Equals(_texts[at], _kept[at], StringComparison.Ordinal) || Desk.ReadOnly) return;
        var (path, text) = (Paths[at], _texts[at]);
        _kept[at] = text;
        // Emptied it stays, as one still to be read: without it the others would move up.
        Desk.Change(JobWords.Of(Desk.Root, path), root => JobPath.Set(root, path, JsonValue.Create(text)), _goesOn);
        _goesOn = true;
    }

    private void Understand(int at) =>
        Say?.Invoke(_texts[at].Trim().Length > 0 && LengthText.Read(_texts[at], Desk.Unit) is LengthReading.Understood read ? $"{Labels[at]} = {LengthText.Finer(read.Value, Tape)}" : "");
}
