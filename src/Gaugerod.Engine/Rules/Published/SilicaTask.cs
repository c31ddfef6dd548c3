using Gaugerod.Plane;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>Where a tool is used.</summary>
public enum Air
{
    /// <summary>In the open.</summary>
    Outside,

    /// <summary>Indoors, or where air does not move.</summary>
    Inside,
}

/// <summary>What a tool asks for so that no air is measured, as the table of 29 CFR 1926.1153 has it.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Control">How its dust is held down.</param>
/// <param name="Air">Where it is used; null where that makes no difference.</param>
/// <param name="Short">The mask for 4 hours a day or less, by the protection it is assigned; 0 for none.</param>
/// <param name="Long">The mask for longer.</param>
/// <param name="Known">Whether it was read, or is from memory.</param>
public sealed record SilicaTask(string Tool, string Control, Air? Air, int Short, int Long, Known Known)
{
    /// <summary>How long the shorter time is, in hours a day.</summary>
    public const int Hours = 4;

    /// <summary>The rows that setting tile asks for. Mixing powder is in none of them.</summary>
    public static Sequence<SilicaTask> All { get; } =
    [
        new("standing wet saw", "water fed to the blade", null, 0, 0, Known.Printed),
        new("handheld saw", "water fed to the blade", Published.Air.Outside, 0, 10, Known.Printed),
        new("handheld saw", "water fed to the blade", Published.Air.Inside, 10, 10, Known.Printed),
        new("handheld saw, fibre cement only, blade to 8 in", "dust drawn off and filtered", Published.Air.Outside, 0, 0, Known.Printed),
        new("grinder on mortar joints", "shroud, dust drawn off and filtered", null, 10, 25, Known.FromMemory),
        new("other grinder", "water", Published.Air.Outside, 0, 0, Known.FromMemory),
        new("other grinder", "shroud, dust drawn off and filtered", Published.Air.Inside, 0, 10, Known.FromMemory),
        new("drill", "shroud, dust drawn off", null, 0, 0, Known.FromMemory),
    ];

    /// <summary>The mask for so many hours a day, by the protection it is assigned; 0 for none.</summary>
    public int Mask(double hours) => hours <= Hours ? Short : Long;
}
