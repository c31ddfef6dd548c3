using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether a floor with a drain is large enough for a shower, how high water is kept from its walls, and how that is tried. Said only where the job names its region.</summary>
internal static class ShowerRules
{
    private const string Rule = "shower";

    /// <summary>What there is to say of a floor with a bed that falls to a drain.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="floor">The floor as measured.</param>
    /// <param name="region">The job's region.</param>
    /// <param name="tape">How it is said.</param>
    internal static IEnumerable<Finding> Findings(Bed bed, Ring floor, Region region, Tape tape)
    {
        // What falls to an edge is a bench, a sill or a curb.
        if (bed.Request.Toward is not null) yield break;
        var (area, disc) = (LimitTable.For(region, LimitKeys.ShowerArea), LimitTable.For(region, LimitKeys.ShowerDisc));
        var isSmall = bed.Area < area.Least.Area * (1 - 1e-9);
        yield return new(
            isSmall ? FindingLevel.Warn : FindingLevel.Note, Rule, bed.Face, "If this floor is a shower's: how large it is, as measured here. Inside its finished walls it is smaller." + (isSmall ? area.Do : ""),
            $"at least {Small(area.Least.Area, tape)}", Small(bed.Area, tape), area.Source);

        var widest = Length.FromSteps((long)(WidestDisc.On(floor) * Length.StepsPerMillimetre));
        // It is found to half a millimetre.
        var isNarrow = widest + Length.FromSteps(Length.StepsPerMillimetre / 2) < disc.LeastOn(tape);
        yield return new(
            isNarrow ? FindingLevel.Warn : FindingLevel.Note, Rule, bed.Face, "If this floor is a shower's: the widest round that fits on it, as measured here. Inside its finished walls it is smaller." + (isNarrow ? disc.Do : ""),
            $"at least {Shown.Fine(disc.LeastOn(tape), tape)}", LengthText.Nearest(widest, tape), disc.Source);

        var (depth, code, custom) = (LimitTable.For(region, LimitKeys.FloodDepth), LimitTable.For(region, LimitKeys.FloodCode), LimitTable.For(region, LimitKeys.FloodCustom));
        yield return new(
            FindingLevel.Note, "flood-test", bed.Face, $"Before tile goes on, try whether it holds water. {code.Limit.Do} Ask the inspector which time holds.",
            $"at least {Shown.Fine(depth.LeastOn(tape), tape)} of water at the threshold for {code.Least}; {custom.Least} as many places and the trade have it", "", $"{code.Source}; {custom.Limit.Source}");
        if (bed.Least > Length.Zero)
        {
            var upturn = LimitTable.For(region, LimitKeys.Upturn);
            yield return new(FindingLevel.Note, Rule, bed.Face, $"Where a liner lies under this bed, how far it is turned up. {upturn.Limit.Do}", $"at least {Shown.Fine(upturn.LeastOn(tape), tape)} over the finished threshold", "", upturn.Source);
        }
    }

    /// <summary>What there is to say of a wall with a membrane to a height.</summary>
    /// <param name="face">The wall.</param>
    /// <param name="region">The job's region.</param>
    /// <param name="tape">How it is said.</param>
    internal static IEnumerable<Finding> Wall(Face face, Region region, Tape tape)
    {
        if (face.Under?.Membrane is not { To: { } to }) yield break;
        var limit = LimitTable.For(region, LimitKeys.WallFinish);
        var isLow = to < limit.LeastOn(tape);
        yield return new(
            isLow ? FindingLevel.Warn : FindingLevel.Note, "membrane-height", face.Name,
            "If this wall is a shower's: how high its membrane goes. The limit is that of the wall's finish, from the shower's floor, and the trade has the membrane go at least to the shower head (common practice, no source)." + (isLow ? limit.Do : ""),
            $"at least {Shown.Fine(limit.LeastOn(tape), tape)}", Shown.Fine(to, tape), limit.Source);
        if (region == Region.Australia)
        {
            var onto = LimitTable.For(region, LimitKeys.MembraneOut);
            yield return new(FindingLevel.Note, "membrane-height", face.Name, $"How far the membrane goes on into the room beyond a hob. {onto.Limit.Do}", $"at least {Shown.Fine(onto.LeastOn(tape), tape)}", "", onto.Source);
        }
    }

    private static string Small(double area, Tape tape) => tape.Unit == LengthUnit.Inch
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{area / 645.16:0} in²")
        : Amounts.Area(area, tape);
}
