using Gaugerod.App.Desk;
using Gaugerod.Engine;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Says with which faces a survey is weighed, and what may be in error on them.</summary>
internal static class SurveyWeighed
{
    /// <summary>Such as <c>Weighed with floor and east.</c>; empty where a face is weighed by itself.</summary>
    public static string With(SurveyLook look) => look.Shape.Weighed is { With: { Count: > 0 } with } ? $"Weighed with {Listed(with)}." : "";

    /// <summary>What is in question beside this face's readings, where the findings do not say it: they say it once, on one of the faces.</summary>
    public static string Elsewhere(SurveyLook look)
    {
        if (look.Shape.Weighed is not { } weighed || look.Shape.Findings.Any(finding => finding.Rule is "readings-agree" && finding.Level != FindingLevel.Note)) return "";
        if (weighed.Elsewhere.Count > 0)
        {
            var own = weighed.Suspects.Select(i => weighed.Readings[i].Said);
            // What is to be read on another face is told there, where its corners are meant.
            return $"The readings disagree, and nothing tells which is in error. One of these: {string.Join("; ", own.Concat(weighed.Elsewhere))}. Read them again{(weighed.Asked is not null ? $", or {weighed.Next}" : "")}.";
        }

        return weighed.Suspects.Count == 0 ? Around(look) : "";
    }

    /// <summary>That something on the other faces is in question; empty where nothing is.</summary>
    public static string Around(SurveyLook look) => look.OthersInDoubt is { Count: > 0 } others ? $"Readings are in question on {Listed(others)}." : "";

    private static string Listed(IReadOnlyCollection<string> names) => names.Count == 1 ? names.First() : $"{string.Join(", ", names.Take(names.Count - 1))} and {names.Last()}";
}
