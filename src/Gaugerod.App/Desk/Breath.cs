using System.Diagnostics;

namespace Gaugerod.App.Desk;

/// <summary>Long work on the page's one thread takes breath between: after half a frame of it the page may draw and hear.</summary>
internal sealed class Breath
{
    /// <summary>So long one works before taking breath, in milliseconds: half a frame.</summary>
    private const int HalfFrame = 8;

    private readonly Stopwatch _since = Stopwatch.StartNew();

    /// <summary>Whether it is time.</summary>
    public bool IsDue => _since.ElapsedMilliseconds >= HalfFrame;

    /// <summary>Lets the page draw and hear, due or not.</summary>
    public async Task TakeAsync()
    {
        await Task.Delay(1);
        _since.Restart();
    }

    /// <summary>Does work that gives way after every step, and takes breath when it is due.</summary>
    /// <param name="steps">The work.</param>
    /// <param name="goesOn">Asked after each breath; once it is not wanted any more the work is left.</param>
    /// <returns>The last step; nothing where the work was left.</returns>
    public static async Task<T?> ThroughAsync<T>(IEnumerable<T?> steps, Func<bool> goesOn)
        where T : class
    {
        var (breath, last) = (new Breath(), (T?)null);
        foreach (var step in steps)
        {
            last = step;
            if (!breath.IsDue) continue;
            await breath.TakeAsync();
            if (!goesOn()) return null;
        }

        return last;
    }
}
