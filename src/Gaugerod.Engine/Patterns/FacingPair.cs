using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>Two sides of a face that face each other with less than a tile between them, and the tiles that lie near both.</summary>
/// <param name="One">The first, as its place among the lines.</param>
/// <param name="Other">The second.</param>
/// <param name="Widest">How far apart they stand at the most.</param>
/// <param name="Tiles">The tiles, as each of the two has them.</param>
internal sealed record FacingPair(int One, int Other, double Widest, (NearTile One, NearTile Other)[] Tiles)
{
    /// <summary>All such pairs among some lines.</summary>
    public static FacingPair[] Among(FieldLine[] lines)
    {
        var pairs = new List<FacingPair>();
        for (var i = 0; i < lines.Length; i++)
        {
            for (var j = i + 1; j < lines.Length; j++)
            {
                if (lines[i].Face != lines[j].Face || lines[i].Edge < 0 || lines[j].Edge < 0 || lines[i].Legs?.HasStrip(lines[i].Edge, lines[j].Edge) == false) continue;
                if (FacingCuts.Widest(lines[i].Line, lines[j].Line) is not { } widest || FacingCuts.Gap(lines[i].Line, new(0, lines[i].Line.Length), lines[j].Line, new(0, lines[j].Line.Length)) >= lines[i].GreatestDepth) continue;
                var others = lines[j].Tiles.GroupBy(near => near.Slot).ToDictionary(group => group.Key, group => group.First());
                var shared = lines[i].Tiles.Where(near => others.ContainsKey(near.Slot)).Select(near => (near, others[near.Slot])).ToArray();
                if (shared.Length > 0) pairs.Add(new(i, j, widest, shared));
            }
        }

        return [.. pairs];
    }
}
