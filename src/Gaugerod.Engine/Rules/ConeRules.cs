using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>
/// Whether flat tile can follow a floor that falls from a round edge. A tile that lies across the fall bridges the hollow: its
/// corners stand off by what the middle of its diagonal lies below them. On a round cone of slope s that is s times the difference
/// between the distances of the diagonal's ends and of its middle from the drain.
/// </summary>
internal static class ConeRules
{
    private const string Rule = "falls";

    /// <summary>1/4 in in a foot, the least of IRC P2709, from the farthest place of a level rim: steeper from nearer places.</summary>
    private const double Fall = 1 / 48.0;

    private const int MostWays = 64, Halvings = 40;
    private static readonly Length s_largest = Length.FromMillimetres(4000);

    internal static IEnumerable<Finding> Findings(FinishedFace face, RunFacts facts) => face.Cones.Select(cone => Of(cone, face, facts));

    private static Finding Of(Cone cone, FinishedFace face, RunFacts facts)
    {
        var (allowed, lippage) = LippageLimits.At(facts.Joint, facts.Product.Warpage ?? Length.Zero, facts.Region);
        var source = $"lippage: {lippage}; fall of 1/4 in a foot: IRC P2709";
        var (width, height) = facts.Bond is BondRequest.Mosaic(var across, var up) ? (Chip(facts.Product.Width, across), Chip(facts.Product.Height, up)) : (facts.Product.Width, facts.Product.Height);
        var what = facts.Bond is BondRequest.Mosaic ? "chip" : "tile";
        var floor = new ConeShape(cone, cone.Farthest.Steps * Fall);
        var diagonal = Math.Sqrt(((double)width.Steps * width.Steps) + ((double)height.Steps * height.Steps));
        var (ways, limit) = (floor.Ways(MostWays), (double)allowed.Steps);
        var most = ways.Max(way => floor.Hollow(way, Nearest(cone, way), diagonal));
        var rounds = string.Join(", ", cone.Rounds.Select(round => $"'{round}'"));
        var begins = $"Along {rounds} the floor falls to '{cone.Drain}' as a cone, with no fold to cut along. Reckoned with a level rim and 1 in 48 from its farthest place";
        var shown = $"a {what} of {Shown.Fine(width, facts.Tape)} by {Shown.Fine(height, facts.Tape)}";
        var (atMost, value) = ($"at most {Shown.Fine(allowed, facts.Tape)} at a corner", Shown.Fine(Grid.Nearest(most), facts.Tape));
        if (most <= limit) return new(FindingLevel.Note, Rule, face.Name, $"{begins}, {shown} follows it from the drain's rim on.", atMost, value, source);
        var side = Length.FromSteps((long)(Largest(floor, ways, limit) / Math.Sqrt(2)));
        var (from, everywhere) = From(floor, ways, diagonal, limit);
        var where = everywhere ? "anywhere on it" : $"nearer than {LengthText.Nearest(Grid.Nearest(from), facts.Tape)} to the drain's middle";
        return new(
            FindingLevel.Warn, Rule, face.Name,
            $"{begins}, the corners of {shown} stand off by more than can be held {where}. Square tile of up to {LengthText.Down(side, facts.Tape)} can follow it; a corner in place of an arc would be folded.",
            atMost, value, source);

        Length Chip(Length sheet, int count) => Length.FromSteps((sheet + facts.Joint).Steps / count) - facts.Joint;
    }

    // Over the drain there is no tile, and none lies beyond the edge.
    private static double Nearest(Cone cone, (double X, double Y, double Edge) way) => Math.Min(cone.Rim.Steps, way.Edge);

    /// <summary>The longest diagonal that follows the floor from the drain's rim on.</summary>
    private static double Largest(ConeShape floor, IReadOnlyList<(double X, double Y, double Edge)> ways, double limit) =>
        Halved(0, s_largest.Steps, diagonal => ways.Max(way => floor.Hollow(way, Nearest(floor.Cone, way), diagonal)) <= limit);

    /// <summary>From where on a diagonal follows the floor, and whether there is a way along which it nowhere does.</summary>
    private static (double From, bool Everywhere) From(ConeShape floor, IReadOnlyList<(double X, double Y, double Edge)> ways, double diagonal, double limit)
    {
        var from = ways.Select(way => (At: Halved(way.Edge, 0, at => floor.Hollow(way, at, diagonal) <= limit), way.Edge)).ToList();
        return (from.Max(way => way.At), from.All(way => way.At >= way.Edge));
    }

    /// <summary>The last place on the way from a good one to a bad one that is still good.</summary>
    private static double Halved(double good, double bad, Func<double, bool> isGood)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (good + bad) / 2;
            if (isGood(middle)) good = middle;
            else bad = middle;
        }

        return good;
    }
}
