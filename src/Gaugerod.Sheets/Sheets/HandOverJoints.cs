using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Where the soft joints are, for whoever looks at them in later years.</summary>
internal static class HandOverJoints
{
    public static void Add(Flow flow, HandedOver given, Figures figures)
    {
        var edges = given.Soft.Select(joint => (IReadOnlyList<string>)[joint.Face, Edge(joint.Edge), HandOverWords.Where(joint.Kind) + (joint.With.Count == 0 ? "" : $", with {string.Join(", ", joint.With)}"), figures.FineWithUnit(joint.Width), HandOverWords.Long(joint.Long, figures.Tape), "□"]);
        var across = given.Across.Select(joint => (IReadOnlyList<string>)[joint.Face, "across the field", HandOverWords.Where(joint, figures.Tape), figures.FineWithUnit(joint.Width), HandOverWords.Long(joint.Long, figures.Tape), "□"]);
        var words = $"Filled with sealant, not with grout. {HandOverWords.Renew(given.Request.Renew)} A corner of two faces stands here once.";
        // The edge of an opening is called opening.side in the job file.
        static string Edge(string name) => name.LastIndexOf('.') is > 0 and var dot ? $"{name[(dot + 1)..]} of {name[..dot]}" : name;

        HandOverSheets.Rows(flow, "Soft joints", words, [new("Face", 34, Bold: true), new("Edge", 34), new("Where", 62), new("Wide", 20, Right: true), new("Long", 22, Right: true), new("", 8, Right: true)], edges.Concat(across));
    }
}
