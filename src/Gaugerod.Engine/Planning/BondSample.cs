using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>A tile of a bond's sample.</summary>
/// <param name="Outline">Its outline.</param>
/// <param name="Product">Which of the bond's products it is: 0 for the run's own.</param>
public sealed record SampleTile(Ring Outline, int Product);

/// <summary>A piece of a run's bond at true proportion, to be looked at before anything is planned.</summary>
/// <param name="Tiles">The tiles that touch the window.</param>
/// <param name="Window">What of them is looked at.</param>
public sealed record BondSample(Sequence<SampleTile> Tiles, Box Window)
{
    /// <summary>The sample, seven wide and four high; null when the run's tiles do not make its bond.</summary>
    /// <param name="job">The job, or as much of it as could be read.</param>
    /// <param name="run">The run's name.</param>
    public static BondSample? Of(Job job, string run)
    {
        ArgumentNullException.ThrowIfNull(job);
        var index = job.Runs.ToList().FindIndex(one => string.Equals(one.Name, run, StringComparison.Ordinal));
        if (index < 0) return null;
        var request = job.Runs[index];
        var known = job.Products.Select(product => product.Name).ToHashSet(StringComparer.Ordinal);
        if (!request.Bond.With.Prepend(request.Product).All(known.Contains) || BondFaults.Bond(job, index, out _) is not { } bond) return null;

        // Of mosaic its chips are looked at, over some sheets; they lie as the sheets do.
        var sheets = bond.Chips is null ? 5 : 2;
        var cell = bond.Motif.Max(tile => Math.Max(tile.Cell.Width.Steps, tile.Cell.Height.Steps));
        bond = bond.Chips ?? bond;
        // A few tiles each way, and somewhat more than a repeat.
        var wide = Math.Max(cell * sheets, Reach(bond.Lattice.First, bond.Lattice.Second) * 3 / 2);
        var (right, up) = (Length.FromSteps(wide / 2), Length.FromSteps(wide * 2 / 7));
        var window = new Box(-right, -up, right, up);
        if (bond.Lay == Lay.Upright) window = new(window.Bottom, window.Left, window.Top, window.Right);
        var heading = Heading.Of(request.Bond.Turn);
        var laid = Box.Around(window.Corners().Select(heading.Back));
        var tiles = PatternLayout.Tiles(bond, 0, 0, laid).Select(tile => new SampleTile(
            new(bond.Motif[tile.Tile].Shape.Points.Select(p => heading.Turn(p.Moved(Length.FromSteps(tile.X), Length.FromSteps(tile.Y)))).ToSequence()),
            bond.Motif[tile.Tile].Product));
        return bond.Lay == Lay.Upright
            ? new(tiles.Select(tile => tile with { Outline = new(tile.Outline.Points.Select(p => p.Transposed()).ToSequence()) }).ToSequence(), new(window.Bottom, window.Left, window.Top, window.Right))
            : new(tiles.ToSequence(), window);
    }

    private static long Reach(Repeat first, Repeat second) =>
        Math.Max(Math.Abs(first.Along.Steps) + Math.Abs(second.Along.Steps), Math.Abs(first.Across.Steps) + Math.Abs(second.Across.Steps));
}
