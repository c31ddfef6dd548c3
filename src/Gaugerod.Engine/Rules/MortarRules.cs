using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How thick mortar may lie under tile, and how much of the tile's back it must hold.</summary>
internal static class MortarRules
{
    private const double Inch = 25.4;

    private const string Thickness = "trade press on thin-set and medium beds: embedded, 3/32 in to 1/4 in; mortar for large and heavy tile to 1/2 in. The bag's own limits come first";

    private const string Contact = "ANSI A108.5, 3.3.2, as the trade press gives it; natural stone: 95 % and more, by source";

    /// <summary>What there is to say of a run that names its mortar.</summary>
    /// <param name="run">The run.</param>
    /// <param name="bed">How thick the mortar lies once tiles are pressed in, in mm.</param>
    /// <param name="tape">How it is said.</param>
    internal static IEnumerable<Finding> Findings(string run, double bed, Tape tape)
    {
        // A thousandth of an inch is below what any trowel is held to.
        const double Hair = Inch / 1000;
        var (least, most, heavy) = (Inch * 3 / 32, Inch / 4, Inch / 2);
        var limits = $"{Amounts.Film(least, tape)} to {Amounts.Film(most, tape)}, and to {Amounts.Film(heavy, tape)} with mortar for large and heavy tile";
        if (bed < least - Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thinner than thin-set is meant to. Hold the trowel steeper, take a deeper notch, or butter the backs too; then lift a tile and look.", limits, Amounts.Film(bed, tape), Thickness);
        }
        else if (bed > heavy + Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thicker than such beds are meant to. Bring the wall or the floor in first, and take a shallower notch.", limits, Amounts.Film(bed, tape), Thickness);
        }
        else if (bed > most + Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thicker than plain thin-set is meant to. Take mortar for large and heavy tile, or a shallower notch.", limits, Amounts.Film(bed, tape), Thickness);
        }

        yield return new(
            FindingLevel.Note, "mortar-contact", run,
            "Lift a tile at the start, and again with every batch: note how much of its back the mortar holds. Where it is too little, take a deeper notch or butter the backs. Comb one way, along the tile's short side, and press it in across the ridges.",
            "at least 80 % of the back where it is dry, 95 % in showers and outdoors, corners held", "", Contact);
    }
}
