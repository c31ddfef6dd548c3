using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Gaugerod.App.Parts;

/// <summary>A part of a station that is drawn a moment after what stands before it: a whole station at once would make a touch wait on a slow phone.</summary>
public sealed class Later : ComponentBase, IDisposable
{
    private bool _due;
    private bool _gone;

    /// <summary>The part.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    internal Turns Turns { get; set; } = null!;

    /// <inheritdoc />
    protected override void OnInitialized() => _ = DrawAsync();

    /// <inheritdoc />
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (_due) builder.AddContent(0, ChildContent);
    }

    /// <inheritdoc />
    public void Dispose() => _gone = true;

    private async Task DrawAsync()
    {
        await Turns.NextAsync();
        if (_gone) return;
        _due = true;
        StateHasChanged();
    }
}
