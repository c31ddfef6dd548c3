namespace Gaugerod.App.Parts;

/// <summary>Gives the parts of a station their turn to be drawn, one after the other, so that a touch between is heard.</summary>
internal sealed class Turns
{
    private Task _last = Task.CompletedTask;

    /// <summary>Done when it is one's turn.</summary>
    public Task NextAsync() => _last = AfterAsync(_last);

    /// <summary>Done when all who wait for their turn have had it.</summary>
    public async Task RestAsync()
    {
        for (var last = _last; !last.IsCompleted; last = _last) await last;
    }

    private static async Task AfterAsync(Task before)
    {
        await before;
        await Task.Delay(1);
    }
}
