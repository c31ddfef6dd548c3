using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>
/// Saws a tile as the plan says and looks at what lies on the bench: every cut goes from side to side of one piece of it, the
/// blade takes its width, and in the end every blank lies there whole, of its size, with its factory sides. Says what is wrong,
/// or null.
/// </summary>
internal static class SawReferee
{
    public static string? Fault(Wanted wanted, int[] kinds, TileLayout layout)
    {
        var stock = wanted.Stock;
        var bench = new List<Area> { new(0, 0, stock.Width, stock.Height) };
        foreach (var cut in layout.Cuts)
        {
            if (!bench.Remove(cut.Over)) return $"nothing like {cut.Over} lies on the bench";
            var (near, far) = cut.BladeBefore ? (cut.At - stock.Kerf, cut.At) : (cut.At, cut.At + stock.Kerf);
            var inside = cut.Upright ? cut.At > cut.Over.Left && cut.At < cut.Over.Right : cut.At > cut.Over.Bottom && cut.At < cut.Over.Top;
            if (!inside) return $"the cut at {cut.At} misses {cut.Over}";
            Lay(bench, cut.Upright ? cut.Over with { Right = near } : cut.Over with { Top = near });
            Lay(bench, cut.Upright ? cut.Over with { Left = far } : cut.Over with { Bottom = far });
        }

        if (!layout.Blanks.Select(b => b.Blank).Order().SequenceEqual(Enumerable.Range(0, kinds.Length))) return "not every blank comes out once";
        foreach (var (blank, (lies, _), at, _) in layout.Blanks)
        {
            if (!bench.Remove(at)) return $"blank {blank} does not lie on the bench";
            if (at.Width != lies.Width || at.Height != lies.Height) return $"blank {blank} is not of its size";
            if (!stock.Ways(wanted.Kinds[kinds[blank]].Cutout).Any(way => way.Lies.Blank == lies)) return $"blank {blank} lies in a way it may not";
            if ((lies.Kept & ~Factory(at, stock)) != 0) return $"blank {blank} has a cut side where it needs a factory side";
        }

        return bench.ToHashSet().SetEquals(layout.Left) ? null : "what is left is not what the plan says";
    }

    private static void Lay(List<Area> bench, Area area)
    {
        if (area.Width > 0 && area.Height > 0) bench.Add(area);
    }

    private static Sides Factory(Area at, Stock stock) =>
        (at.Left == 0 ? Sides.Left : 0) | (at.Bottom == 0 ? Sides.Bottom : 0)
        | (at.Right == stock.Width ? Sides.Right : 0) | (at.Top == stock.Height ? Sides.Top : 0);
}
