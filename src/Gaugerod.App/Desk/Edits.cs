namespace Gaugerod.App.Desk;

/// <summary>What was done to a job since it was laid on the desk, the way back and the way on again.</summary>
internal sealed class Edits
{
    private readonly List<(string What, string Text, IReadOnlySet<string> Ticks)> _all = [];
    private static readonly IReadOnlySet<string> s_none = new HashSet<string>(StringComparer.Ordinal);
    private int _at = -1;

    /// <summary>Whether there is a job at all.</summary>
    public bool Any => _at >= 0;

    /// <summary>The job's text as it stands; empty without a job.</summary>
    public string Text => Any ? _all[_at].Text : "";

    /// <summary>The pieces ticked off.</summary>
    public IReadOnlySet<string> Ticks => Any ? _all[_at].Ticks : s_none;

    /// <summary>What <see cref="Back"/> would take back; null for nothing.</summary>
    public string? Undoes => _at > 0 ? _all[_at].What : null;

    /// <summary>What <see cref="On"/> would do again; null for nothing.</summary>
    public string? Redoes => _at + 1 < _all.Count ? _all[_at + 1].What : null;

    /// <summary>Forgets all.</summary>
    public void Clear()
    {
        _all.Clear();
        _at = -1;
    }

    /// <summary>Begins with a job's text.</summary>
    public void Begin(string text, IReadOnlySet<string> ticks)
    {
        Clear();
        _all.Add(("opened", text, ticks));
        _at = 0;
    }

    /// <summary>Keeps a change; what had been taken back before it cannot be done again.</summary>
    public void Add(string what, string text, IReadOnlySet<string> ticks, bool goesOn = false)
    {
        _all.RemoveRange(_at + 1, _all.Count - _at - 1);
        if (goesOn && string.Equals(Undoes, what, StringComparison.Ordinal)) _all[_at] = (what, text, ticks);
        else
        {
            _all.Add((what, text, ticks));
            _at++;
        }
    }

    /// <summary>One change back; false where there is none.</summary>
    public bool Back()
    {
        if (Undoes is null) return false;
        _at--;
        return true;
    }

    /// <summary>One change on; false where there is none.</summary>
    public bool On()
    {
        if (Redoes is null) return false;
        _at++;
        return true;
    }
}
