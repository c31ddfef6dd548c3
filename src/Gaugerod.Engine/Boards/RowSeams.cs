using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>What seams of one row cost by themselves, place by place.</summary>
/// <param name="May">Whether there is board for a seam there.</param>
/// <param name="Costs">What it costs.</param>
/// <param name="MeetsAbove">Whether the level seam over the row runs there, so that a seam above it would go on in line.</param>
internal sealed record RowSeams(bool[] May, SeamCost[] Costs, bool[] MeetsAbove)
{
    /// <summary>The seams of a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="at">Where seams may stand, with the two ends.</param>
    /// <param name="above">The level seam over the row.</param>
    /// <param name="judge">What seams are judged by.</param>
    public static RowSeams Of(SheetRow row, long[] at, IReadOnlyList<Stretch> above, SeamJudge judge)
    {
        var (may, costs, meets) = (new bool[at.Length], new SeamCost[at.Length], new bool[at.Length]);
        for (var i = 1; i + 1 < at.Length; i++)
        {
            var seam = row.Seam(i);
            may[i] = seam.Count > 0;
            costs[i] = judge.Cost(isPlumb: true, at[i], seam);
            foreach (var stretch in above) meets[i] |= stretch.From <= at[i] && at[i] <= stretch.To;
        }

        return new(may, costs, meets);
    }
}

/// <summary>Judges a seam by itself: what it runs into, what lies over it, how long it is.</summary>
/// <param name="corners">The corners that point into the board.</param>
/// <param name="sheet">The sheet.</param>
/// <param name="joints">The joints between tiles where water runs.</param>
internal sealed class SeamJudge(IReadOnlyList<Point> corners, SheetLies sheet, JointBands joints)
{
    public SeamCost Cost(bool isPlumb, long at, IReadOnlyList<Stretch> stretches)
    {
        var (hits, length) = (0, 0L);
        foreach (var stretch in stretches) length += stretch.Length;
        foreach (var corner in corners)
        {
            var (across, along) = isPlumb ? (corner.X.Steps, corner.Y.Steps) : (corner.Y.Steps, corner.X.Steps);
            if (Math.Abs(across - at) >= BoardLimits.FromCorner) continue;
            foreach (var stretch in stretches)
            {
                if (along <= stretch.From - BoardLimits.FromCorner || along >= stretch.To + BoardLimits.FromCorner) continue;
                hits++;
                break;
            }
        }

        return new(hits, 0, 0, 0, 0, joints.Any ? joints.Under(isPlumb, at - sheet.Before, at + sheet.After, stretches) : 0, length);
    }
}
