using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How thick mortar may lie under tile, and how much of the tile's back it must hold.</summary>
internal static class MortarRules
{
    /// <summary>What there is to say of a run that names its mortar.</summary>
    /// <param name="run">The run.</param>
    /// <param name="bed">How thick the mortar lies once tiles are pressed in, in mm.</param>
    /// <param name="tape">How it is said.</param>
    /// <param name="region">The job's region; null where it names none.</param>
    internal static IEnumerable<Finding> Findings(string run, double bed, Tape tape, Region? region = null)
    {
        // A thousandth of an inch is below what any trowel is held to.
        const double Hair = 25.4 / 1000;
        var (plain, thick) = (LimitTable.For(region, LimitKeys.MortarBed), LimitTable.For(region, LimitKeys.MortarHeavy));
        var (least, most, heavy) = (Mm(plain.Least), Mm(plain.Most), Mm(thick.Most));
        var limits = $"{Amounts.Film(least, tape)} to {Amounts.Film(most, tape)}, and to {Amounts.Film(heavy, tape)} with mortar for large and heavy tile";
        if (bed < least - Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thinner than thin-set is meant to. Hold the trowel steeper, take a deeper notch, or butter the backs too; then lift a tile and look.", limits, Amounts.Film(bed, tape), plain.Source);
        }
        else if (bed > heavy + Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thicker than such beds are meant to. Bring the wall or the floor in first, and take a shallower notch.", limits, Amounts.Film(bed, tape), plain.Source);
        }
        else if (bed > most + Hair)
        {
            yield return new(FindingLevel.Warn, "mortar-bed", run, "The mortar lies thicker than plain thin-set is meant to. Take mortar for large and heavy tile, or a shallower notch.", limits, Amounts.Film(bed, tape), plain.Source);
        }

        var (dry, wet) = (LimitTable.For(region, LimitKeys.ContactDry), LimitTable.For(region, LimitKeys.ContactWet));
        yield return new(
            FindingLevel.Note, "mortar-contact", run,
            "Lift a tile at the start, and again with every batch: note how much of its back the mortar holds. Where it is too little, take a deeper notch or butter the backs. Comb one way, along the tile's short side, and press it in across the ridges.",
            $"at least {dry.Least} of the back where it is dry, {wet.Least} in showers and outdoors, corners held", "", dry.Source);
    }

    private static double Mm(Figure figure) => (double)figure.Length.Millimetres;
}
