using Gaugerod.App.Desk;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Parts;

/// <summary>
/// A field that is drawn again only when something of what it shows has changed. A wall has some fifty, and whatever is typed
/// in one is told to all.
/// </summary>
public abstract class Still : ComponentBase
{
    private object? _drawn;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    /// <summary>All that decides how it looks, to be compared with what it was; lists written out.</summary>
    protected abstract object Seen { get; }

    /// <inheritdoc />
    protected override bool ShouldRender()
    {
        var now = Seen;
        if (now.Equals(_drawn)) return false;
        _drawn = now;
        return true;
    }

    /// <summary>Has it drawn next time all the same: what a person put into it may have to be put back.</summary>
    protected void Anew() => _drawn = null;

    /// <summary>A list, to be compared.</summary>
    protected static string Written(IEnumerable<string> lines) => string.Join('\n', lines);
}
