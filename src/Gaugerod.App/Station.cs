namespace Gaugerod.App;

/// <summary>The stations, in the job's own order.</summary>
public enum Station
{
    /// <summary>The jobs on this device.</summary>
    Jobs,

    /// <summary>Faces and their readings.</summary>
    Measure,

    /// <summary>Where the tile starts.</summary>
    Lines,

    /// <summary>What to cut.</summary>
    Cuts,

    /// <summary>What is set, and what of it came out otherwise.</summary>
    Set,

    /// <summary>What to buy.</summary>
    Order,

    /// <summary>What to print and save.</summary>
    Sheets,

    /// <summary>How it is done.</summary>
    Help,
}
