namespace Gaugerod.Engine.Rules;

/// <summary>Says which faces get no tile, so that nobody finds out on the wall.</summary>
internal static class BareFaces
{
    private const string Rule = "bare-face";

    /// <summary>A face that is in no run.</summary>
    public static Finding InNoRun(string face) =>
        new(FindingLevel.Warn, Rule, face, "This face is in no run: it gets no tile and nothing is ordered for it.", "", "", "");

    /// <summary>A face of a run on which no tile falls.</summary>
    public static Finding NoTile(string face) =>
        new(FindingLevel.Warn, Rule, face, "No tile falls on this face: what joints and trims leave of it is no wider than a joint.", "", "", "");
}
