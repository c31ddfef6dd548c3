using Gaugerod.Engine.Planning;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How every piece of a plan is marked on its tile, in the cut list's own words, for a page that is not a sheet.</summary>
public static class CutText
{
    /// <summary>What the sizes mean.</summary>
    public static string Key => CutWords.Key;

    /// <summary>By a piece's number: its cuts and holes, one to a line.</summary>
    public static IReadOnlyDictionary<string, string> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var figures = new Figures(plan.Job.Tape);
        return PieceOnFace.All(plan, figures).ToDictionary(of => of.Key, of => CutWords.Of(of.Value, figures), StringComparer.Ordinal);
    }
}
