using System.Text.Json.Nodes;
using Gaugerod.Plane.Measure;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Parts;

/// <summary>
/// A length as a person types it. What was typed goes into the job as typed, also when it cannot be read; what was understood
/// is said at once in the job's unit, and where two readings are possible both are offered.
/// </summary>
public sealed partial class LengthField : Still
{
    // Long enough that planning does not begin between two keys, short enough that the drawing follows.
    private static readonly TimeSpan s_rest = TimeSpan.FromMilliseconds(220);

    private string _text = "";
    private string _kept = "";
    private string _at = "";
    private string _echo = "";
    private string? _refused;
    private IReadOnlyList<string> _offers = [];
    private bool _goesOn;
    private bool _left;
    private int _round;
    private (string, Tape)? _understood;

    /// <summary>Its place in the job, as faults name it.</summary>
    [Parameter, EditorRequired]
    public string Path { get; set; } = "";

    /// <summary>What it is called.</summary>
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>What undo calls a change of it; default made of its place: "width at the foot of north".</summary>
    [Parameter]
    public string? What { get; set; }

    /// <summary>Whether the job needs it. Emptied, it then stays in the job as empty and is said; else it is taken out.</summary>
    [Parameter]
    public bool Required { get; set; }

    /// <summary>What else of the job changes with it, given the text before and the value now.</summary>
    [Parameter]
    public Action<JsonObject, string, JsonNode?>? Also { get; set; }

    /// <summary>What is said while it is empty.</summary>
    [Parameter]
    public string Hint { get; set; } = "";

    /// <summary>What it measures, said when the length is out of the usual: "a wall".</summary>
    [Parameter]
    public string Thing { get; set; } = "";

    /// <summary>The least that is usual; what is shorter is asked after, not refused. Null for no such.</summary>
    [Parameter]
    public Length? Least { get; set; }

    /// <summary>The most that is usual; what is longer is asked after, not refused. Null for no such.</summary>
    [Parameter]
    public Length? Most { get; set; }

    private Tape Tape => Desk.Job is { } job && job.Tape.Unit == Desk.Unit ? job.Tape : Desk.Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;

    private string Id => FieldId.Of(Path);

    private IReadOnlyList<string> Troubles =>
        _refused is not null ? [_refused]
        : _text.Trim().Length == 0 ? Required && _left ? ["Still to be read."] : []
        : Same(_text, _kept) ? [.. Unread.Wrong(Desk, Path).Select(FieldId.Say)]
        : [];

    /// <inheritdoc />
    protected override object Seen => (Path, Label, Hint, Required, _text, _echo, Written(Troubles), Written(_offers), (Desk.ReadOnly, Desk.Unit));

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        var now = FieldId.Text(Desk, Path);
        if (!Same(_at, Path)) _left = false;
        if (!Same(_at, Path) || !Same(now, _kept)) (_text, _kept, _at) = (now, now, Path);
        Understand();
    }

    private async Task TypedAsync(ChangeEventArgs change)
    {
        _text = change.Value?.ToString() ?? "";
        Understand();
        var round = ++_round;
        await Task.Delay(s_rest);
        if (round == _round) Flush();
    }

    // An empty field that is needed is asked for quietly until it was passed over.
    private void Leave()
    {
        Flush();
        _left = _text.Trim().Length == 0;
    }

    private void Flush()
    {
        _round++;
        if (Same(_text, _kept) || !Same(_at, Path) || Desk.ReadOnly) return;
        var was = _kept;
        _kept = _text;
        JsonNode? value = _text.Trim().Length > 0 ? JsonValue.Create(_text) : Required ? JsonValue.Create("") : null;
        if (value is null) _kept = "";
        Desk.Change(What ?? JobWords.Of(Desk.Root, Path), root =>
        {
            FieldValue.Put(root, Path, value);
            Also?.Invoke(root, was, value);
        }, _goesOn);
        _goesOn = true;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);

    private Task TakeAsync(string reading)
    {
        _text = reading;
        Understand();
        Flush();
        return Task.CompletedTask;
    }

    private void Understand()
    {
        if (_understood == (_text, Tape)) return;
        _understood = (_text, Tape);
        (_echo, _refused, _offers) = ("", null, []);
        if (_text.Trim().Length == 0) return;
        switch (LengthText.Read(_text, Desk.Unit))
        {
            case LengthReading.Understood read:
                _echo = Echo(read);
                break;
            case LengthReading.Refused refused:
                _refused = $"Not read: expected {refused.Expected}.";
                _offers = [.. (refused.Nearest ?? "").Split(" or ").Where(o => LengthText.Read(o, Desk.Unit) is LengthReading.Understood)];
                break;
        }
    }

    // A comma is a decimal point to some and parts thousands to others: which it was taken for is said.
    private string Comma(Length value)
    {
        if (!_text.Contains(',', StringComparison.Ordinal)) return "";
        var point = _text.Trim().Replace(',', '.');
        return LengthText.Read(point, Desk.Unit) is LengthReading.Understood read && read.Value == value ? $". The comma is read as a decimal point: {point}" : ". The comma is read as parting thousands";
    }

    private string Echo(LengthReading.Understood read)
    {
        // Bare inches are said in feet, to be checked against the tape's other side; all else in the job's unit.
        var plain = Tape.Unit == LengthUnit.Inch && read.Value.Abs() >= Length.FromInches(24) && string.Equals(_text.Trim(), LengthText.NearestBare(read.Value, Tape), StringComparison.Ordinal);
        var said = "= " + (plain ? LengthText.FeetNearest(read.Value, Tape) : LengthText.Finer(read.Value, Tape));
        if (read.InMillimetres is { } other) said += $". The fraction is read as inches; for {LengthText.Finer(other, Tape)} write a decimal";
        return said + Comma(read.Value) + Unusual(read.Value);
    }

    // Feet typed where inches are meant, or a figure left out, can be read all the same. Nought and less is refused elsewhere.
    private string Unusual(Length value) =>
        value > Length.Zero && (value < Least || value > Most) ? $". Is that right for {Thing}?" : "";
}
