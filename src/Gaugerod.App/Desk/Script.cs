using System.Diagnostics.CodeAnalysis;
using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>
/// One of the page's own scripts, loaded when it is first needed. Once ended it does nothing more and complains of nothing: a
/// station may be left before its script has come, and what the script was to work on is then gone.
/// </summary>
/// <param name="js">The page.</param>
/// <param name="name">The script's name in the folder js.</param>
internal sealed class Script(IJSRuntime js, string name) : IAsyncDisposable
{
    private const DynamicallyAccessedMemberTypes Read =
        DynamicallyAccessedMemberTypes.PublicConstructors | DynamicallyAccessedMemberTypes.PublicFields | DynamicallyAccessedMemberTypes.PublicProperties;

    private Task<IJSObjectReference>? _coming;
    private bool _ended;

    /// <summary>Has it do something.</summary>
    public async Task TellAsync(string verb, params object?[] words)
    {
        try
        {
            if (await LoadAsync() is { } module) await module.InvokeVoidAsync(verb, words);
        }
        catch (Exception trouble) when (IsLate(trouble))
        {
            // Nobody waits for it any more.
        }
    }

    /// <summary>Asks it something plain: a text, a number, yes or no; nothing once ended.</summary>
    public async Task<T?> AskAsync<[DynamicallyAccessedMembers(Read)] T>(string verb, params object?[] words)
    {
        try
        {
            return await LoadAsync() is { } module ? await module.InvokeAsync<T>(verb, words) : default;
        }
        catch (Exception trouble) when (IsLate(trouble))
        {
            return default;
        }
    }

    /// <summary>Ends it with a last word, which is said only where it had begun.</summary>
    public async ValueTask EndAsync(string verb, params object?[] words)
    {
        _ended = true;
        try
        {
            if (_coming is { IsCompletedSuccessfully: true }) await (await _coming).InvokeVoidAsync(verb, words);
        }
        catch (Exception trouble) when (IsLate(trouble))
        {
            // As when it is let go of.
        }

        await DisposeAsync();
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        _ended = true;
        if (_coming is { IsCompletedSuccessfully: true }) await LetGoAsync(await _coming);
    }

    /// <summary>
    /// All who ask before it has come wait for the same one, and so are answered in the order in which they asked: of two imports
    /// on the way at once a browser may end the second first.
    /// </summary>
    private async Task<IJSObjectReference?> LoadAsync()
    {
        if (_ended) return null;
        if (_coming is null or { IsFaulted: true }) _coming = js.InvokeAsync<IJSObjectReference>("import", $"./js/{name}.js").AsTask();
        var module = await _coming;
        if (!_ended) return module;
        await LetGoAsync(module);
        return null;
    }

    private static async ValueTask LetGoAsync(IJSObjectReference module)
    {
        try
        {
            await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is going; there is nothing left to let go of.
        }
    }

    private bool IsLate(Exception trouble) => _ended && trouble is JSException or ObjectDisposedException or JSDisconnectedException;
}
