namespace Gaugerod.App.Sheetmaking;

/// <summary>How the making of sheets stands.</summary>
internal enum MakingStage
{
    /// <summary>None were asked for yet.</summary>
    Rest,

    /// <summary>They are being made, on a thread of their own, and can be stopped.</summary>
    Making,

    /// <summary>They are being made on the page's thread, which does nothing else meanwhile.</summary>
    MakingHere,

    /// <summary>They were handed over.</summary>
    Made,

    /// <summary>They were stopped.</summary>
    Stopped,

    /// <summary>Something went wrong.</summary>
    Failed,
}
