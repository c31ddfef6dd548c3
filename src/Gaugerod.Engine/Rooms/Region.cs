namespace Gaugerod.Engine.Rooms;

/// <summary>Where a job lies: whose published limits its checks are held against.</summary>
public enum Region
{
    /// <summary>The United States and Canada.</summary>
    America,

    /// <summary>The United Kingdom.</summary>
    Britain,

    /// <summary>The European Union; the figures held here are those of DIN and EN.</summary>
    Europe,

    /// <summary>Australia and New Zealand.</summary>
    Australia,
}
