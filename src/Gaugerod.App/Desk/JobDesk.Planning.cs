using System.Diagnostics;
using Gaugerod.Engine.Planning;

namespace Gaugerod.App.Desk;

/// <summary>The planning of the job on the desk, which gives way to the page and to every later change.</summary>
internal sealed partial class JobDesk
{
    /// <summary>Planning that takes longer than this is shown, in milliseconds.</summary>
    private const int Worth = 500;

    private int _round;

    /// <summary>How far the planning is, in words; empty when it rests.</summary>
    public string Progress { get; private set; } = "";

    /// <summary>Whether the planning takes long enough to be worth a word: what comes at once need not be announced.</summary>
    public bool Slow { get; private set; }

    /// <summary>What the planning itself fell over, an error of ours; empty when it did not.</summary>
    public string Broken { get; private set; } = "";

    /// <summary>Whether a person stopped the planning before it was done.</summary>
    public bool Stopped { get; private set; }

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
        if (await Breath.ThroughAsync(TextRead.Steps(Text), () => round == _round) is not { } read) return;
        var before = Faults;
        (Faults, AsFar) = (read.Faults, read.AsFar);
        Keep(read);
        if (read.Job is not { } ready)
        {
            Progress = "";
            Changed?.Invoke(this, EventArgs.Empty);
            return;
        }

        var first = Job is null;
        Job = ready.Job;
        if (first || !before.Equals(Faults)) Changed?.Invoke(this, EventArgs.Empty);
        else Understood?.Invoke(this, EventArgs.Empty);
        await Task.Delay(1);
        if (round != _round) return;
        var (all, breath) = (Stopwatch.StartNew(), new Breath());
        foreach (var step in Planner.Steps(ready, Plan))
        {
            if (step.Plan is { } plan) (Plan, Fresh, Progress) = (plan, true, "");
            else if (!breath.IsDue) continue;
            else if (all.ElapsedMilliseconds > Worth && !ReferenceEquals(Progress, step.Text))
            {
                (Slow, Progress) = (true, step.Text);
                Progressed?.Invoke(this, EventArgs.Empty);
            }

            await breath.TakeAsync();
            if (round != _round) return;
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }
}
