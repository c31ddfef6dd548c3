namespace Gaugerod.Engine.Sequencing;

/// <summary>By whose rule clocks are changed where the job is.</summary>
public enum Clocks
{
    /// <summary>They are not changed.</summary>
    None,

    /// <summary>The European Union, as in its middle: elsewhere there the hour of the change is another one of the same night.</summary>
    Eu,

    /// <summary>The United Kingdom.</summary>
    Uk,

    /// <summary>The United States, where clocks are changed.</summary>
    Us,

    /// <summary>Australia, where clocks are changed.</summary>
    Au,

    /// <summary>New Zealand.</summary>
    Nz,
}
