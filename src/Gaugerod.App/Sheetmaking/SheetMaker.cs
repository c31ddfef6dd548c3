using System.Diagnostics.CodeAnalysis;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets;
using Microsoft.AspNetCore.Components.WebAssembly.Services;
using Microsoft.JSInterop;

namespace Gaugerod.App.Sheetmaking;

/// <summary>
/// Has the job sheets made by <c>js/sheets.js</c> on another thread, and on this one where the browser gives no other.
/// It outlives the station, so that a person may go and look at the cuts meanwhile.
/// </summary>
internal sealed class SheetMaker(IJSRuntime js, LazyAssemblyLoader parts) : IAsyncDisposable
{
    /// <summary>Long enough for the page to be painted before its thread is taken.</summary>
    private const int PaintMilliseconds = 100;

    private string _name = "";
    private readonly Script _script = new(js, "sheets");
    private DotNetObjectReference<SheetMaker>? _self;

    /// <summary>The stage or the words have changed.</summary>
    public event EventHandler? Changed;

    public MakingStage Stage { get; private set; }

    /// <summary>How far the making is, or what went wrong.</summary>
    public string Words { get; private set; } = "";

    /// <summary>The job file's text whose sheets were asked for last.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The job on the desk they are of.</summary>
    public string Job { get; private set; } = "";

    public bool Busy => Stage is MakingStage.Making or MakingStage.MakingHere;

    /// <summary>Makes the sheets of a job and hands them over.</summary>
    /// <param name="job">The job on the desk.</param>
    /// <param name="text">The job file's text.</param>
    /// <param name="plan">Its plan, for a browser that gives no other thread.</param>
    /// <param name="kind">Which: <see cref="SheetKinds"/>.</param>
    public async Task MakeAsync(string job, string text, Plan plan, string kind = SheetKinds.Job)
    {
        if (Busy) return;
        (Job, Text, _name) = (job, text, JobFiles.NameOf(plan.Job.Name, $"-{kind}.pdf"));
        Tell(MakingStage.Making, "Getting ready");
        try
        {
            var outcome = await _script.AskAsync<string>("make", text, kind, _name, _self ??= DotNetObjectReference.Create(this));
            if (string.Equals(outcome, "refused", StringComparison.Ordinal)) await MakeHereAsync(plan, kind);
            else Tell(string.Equals(outcome, "made", StringComparison.Ordinal) ? MakingStage.Made : MakingStage.Stopped, "");
        }
        catch (JSException trouble)
        {
            Tell(MakingStage.Failed, trouble.Message);
        }
    }

    /// <summary>Ends the making at once; nothing is handed over.</summary>
    public Task StopAsync() => _script.TellAsync("stop");

    /// <summary>Hands over once more what was made last.</summary>
    public Task AgainAsync() => _script.TellAsync("again");

    /// <summary>Called by the other thread.</summary>
    [JSInvokable]
    public void Say(string words)
    {
        if (Busy) Tell(Stage, words);
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync()
    {
        _self?.Dispose();
        return _script.DisposeAsync();
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Gaugerod.Sheets names what it uses of these parts, so the trimming keeps it.")]
    private async Task MakeHereAsync(Plan plan, string kind)
    {
        Tell(MakingStage.MakingHere, "");
        await Task.Delay(PaintMilliseconds);
        try
        {
            await parts.LoadAssembliesAsync(PdfParts.Names);
            await _script.TellAsync("keep", _name, SheetWriter.Pdf(SheetKinds.Pages(plan, kind), plan.Job.Name));
            Tell(MakingStage.Made, "");
        }
        catch (Exception trouble) when (trouble is IOException or InvalidOperationException or OutOfMemoryException or HttpRequestException)
        {
            Tell(MakingStage.Failed, trouble.Message);
        }
    }

    private void Tell(MakingStage stage, string words)
    {
        (Stage, Words) = (stage, words);
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
