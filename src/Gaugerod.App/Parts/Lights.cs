using Microsoft.JSInterop;

namespace Gaugerod.App.Parts;

/// <summary>
/// The lights a page is shown in, in the order in which a key goes through them. The device's own light looks like one of the
/// others, so the order depends on it: no two neighbours look alike, and every press changes what is seen.
/// </summary>
internal static class Lights
{
    /// <summary>The light that follows the device; it is the first.</summary>
    public const string Device = "as the device";

    private static readonly string[] s_onLight = [Device, "dark", "light", "strong"];
    private static readonly string[] s_onDark = [Device, "light", "dark", "strong"];

    /// <summary>What was kept, where it is a light; else the device's own.</summary>
    public static string Known(string kept) => s_onLight.Contains(kept, StringComparer.Ordinal) ? kept : Device;

    /// <summary>The next light.</summary>
    public static string After(string light, bool deviceIsDark)
    {
        var order = deviceIsDark ? s_onDark : s_onLight;
        return order[(Array.IndexOf(order, light) + 1) % order.Length];
    }

    /// <summary>Whether the device asks for dark pages, as it stands now: many change with the hour.</summary>
    public static async Task<bool> DeviceIsDarkAsync(IJSRuntime js)
    {
        await using var asked = await js.InvokeAsync<IJSObjectReference>("matchMedia", "(prefers-color-scheme: dark)");
        return await asked.GetValueAsync<bool>("matches");
    }
}
