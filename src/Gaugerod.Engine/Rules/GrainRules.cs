using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>The ways in which a run lays the grain of its tiles.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="Bond">Its bond.</param>
/// <param name="IsBorder">Whether it is a border, whose strips lie along their sides.</param>
/// <param name="Ways">Every way that a grain runs on its faces, of any of its products; each once.</param>
internal sealed record GrainFacts(string Run, BondRequest Bond, bool IsBorder, Sequence<Angle> Ways);

/// <summary>Says where one run lays a grain in more than one direction.</summary>
internal static class GrainRules
{
    internal static IEnumerable<Finding> Findings(GrainFacts facts)
    {
        var apart = Apart(facts.Ways);
        if (apart.Count < 2) yield break;
        var ways = string.Join(", ", apart.OrderBy(way => way.Thousandths).Select(GrainWords.Of));
        var (level, text) = facts switch
        {
            { Bond: BondRequest.Herringbone or BondRequest.Basketweave or BondRequest.Windmill or BondRequest.Chevron or BondRequest.Modular, IsBorder: false } =>
                (FindingLevel.Note, "The bond lays the grain in more than one direction, as it is meant to."),
            { IsBorder: true } =>
                (FindingLevel.Warn, "The strips of a border lie along their sides, and the grain turns with them. Ask whether that is meant, and lay a corner of it dry before it is cut."),
            _ => (FindingLevel.Warn, "The grain changes direction within the run. If it is to run one way, choose another bond or another tile."),
        };
        yield return new(level, "grain", facts.Run, text, "", ways, Remarks.NoSource);
    }

    /// <summary>The ways that an eye tells apart: a side out of level by a hair turns no grain.</summary>
    private static List<Angle> Apart(Sequence<Angle> ways)
    {
        const int Seen = 2_000, HalfTurn = 2 * Angle.QuarterTurn;
        var apart = new List<Angle>();
        foreach (var way in ways.OrderBy(way => way.IsSquare ? 0 : 1).ThenBy(way => way.Thousandths))
        {
            if (apart.TrueForAll(other => (way.Thousandths - other.Thousandths + HalfTurn) % HalfTurn is >= Seen and <= HalfTurn - Seen)) apart.Add(way);
        }

        return apart;
    }
}
