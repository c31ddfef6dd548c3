using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether a bed falls as showers are to, how thick it may be, and what it takes.</summary>
internal static class BedRules
{
    /// <summary>1/4 in and 1/2 in in a foot: 2.08 and 4.17 in a hundred. The code prints 2 % and 4 %.</summary>
    internal const double LeastFall = 1 / 48.0, MostFall = 1 / 24.0;

    private const string Rule = "bed", Code = "IRC P2709 (showers; as printed in 2021). Local code comes first";

    private static readonly Length LeastCurb = Length.FromInches(2), MostCurb = Length.FromInches(9), Thick = Length.FromInches(2), OverLiner = Length.FromInches(1, 1, 4), OverLinerStrict = Length.FromInches(1, 1, 2);

    internal static IEnumerable<Finding> Findings(Bed bed, Tape tape)
    {
        var (face, request) = (bed.Face, bed.Request);
        var bags = bed.Bags is { } count ? string.Create(CultureInfo.InvariantCulture, $", {count} {(count == 1 ? "bag" : "bags")}{(request.Bag!.Name is { } name ? $" of {name}" : "")} at {Amounts.Volume(request.Bag.Litres * 1e6, tape)} each, with nothing for waste") : "";
        yield return new(
            FindingLevel.Note, Rule, face,
            $"The bed takes {Amounts.Volume(bed.Volume, tape)}{bags}, and weighs about {Amounts.Weight(bed.Kilograms, tape)}. It is {Shown.Fine(bed.Least, tape)} thick at {bed.Low} and {Shown.Fine(bed.Greatest, tape)} at the most, over a level base. Whether the floor carries that is for whoever answers for the structure.",
            "", Amounts.Volume(bed.Volume, tape), request.Density is null ? "reckoned; 144 lb in a cubic foot (trade press, an answer of the Tile Council's experts, 2021)" : "reckoned; weight as given");

        var slack = 1e-9;
        yield return new(
            bed.LeastFall < LeastFall - slack ? FindingLevel.Warn : FindingLevel.Note, Rule, face, "Its gentlest fall, from its farthest place.",
            $"at least {Amounts.Fall(LeastFall, tape)} (printed as 2 %)", Amounts.Fall(bed.LeastFall, tape), Code);
        var steep = bed.GreatestFall > MostFall + slack;
        var from = bed.SteepestFrom is { } wall ? $", from {wall}" : "";
        yield return new(
            steep ? FindingLevel.Warn : FindingLevel.Note, Rule, face,
            steep && request.Perimeter == Perimeter.Level
                ? $"Its steepest fall{from}: the edge is level, and this is nearest. A drain nearer to the middle, or \"perimeter\": \"constant\", makes it gentler."
                : $"Its steepest fall{from}.",
            $"at most {Amounts.Fall(MostFall, tape)} (printed as 4 %)", Amounts.Fall(bed.GreatestFall, tape), Code);
        foreach (var finding in Thickness(bed, tape)) yield return finding;
        if (request.Curb is { } curb)
        {
            yield return new(
                curb < LeastCurb || curb > MostCurb ? FindingLevel.Warn : FindingLevel.Note, Rule, face, "How high the top of the curb is over the top of the drain.",
                $"from {Shown.Fine(LeastCurb, tape)} to {Shown.Fine(MostCurb, tape)}", Shown.Fine(curb, tape), Code);
        }
    }

    /// <summary>The largest square tile that follows a bed without folds round its drain: beyond it corners stand off.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="rim">How far from the drain's middle the first tile lies.</param>
    /// <param name="allowed">How far a corner may stand off.</param>
    internal static Length Largest(Bed bed, Length rim, Length allowed)
    {
        // s (sqrt(m² + d²/4) - m) is allowed: d the diagonal, m from the drain to its middle.
        var (off, middle) = (allowed.Steps / bed.GreatestFall, (double)rim.Steps);
        return Length.FromSteps((long)Math.Sqrt(2 * off * (off + (2 * middle))));
    }

    private static IEnumerable<Finding> Thickness(Bed bed, Tape tape)
    {
        // What falls to an edge is a bench, a sill or a curb: there is neither a liner nor a drain.
        if (bed.Request.Toward is null && bed.Least > Length.Zero && bed.Least < OverLinerStrict)
        {
            yield return new(
                bed.Least < OverLiner ? FindingLevel.Warn : FindingLevel.Note, Rule, bed.Face, "How thick it is at the drain, where it lies over a liner. A bonded bed may feather out, as its instructions say.",
                $"at least {Shown.Fine(OverLiner, tape)}, and {Shown.Fine(OverLinerStrict, tape)} as a consultant reads A108.1A", Shown.Fine(bed.Least, tape), "trade press: consensus of setters, and a consultant's reading of ANSI A108.1A");
        }

        if (bed.Greatest > Thick)
        {
            yield return new(FindingLevel.Warn, Rule, bed.Face, "How thick it is at the most. Thicker beds need whoever specifies them to agree.", $"{Shown.Fine(OverLiner, tape)} to {Shown.Fine(Thick, tape)}", Shown.Fine(bed.Greatest, tape), "TCNA Handbook, method F103B, as the trade press gives it (2021)");
        }

        // 65 ft², as a consultant reads A108.1A.
        if (bed.Area > 65 * 144 * 645.16)
        {
            yield return new(FindingLevel.Note, Rule, bed.Face, "A bed this large is reinforced.", "reinforced over 65 ft² (6 m²)", string.Create(CultureInfo.InvariantCulture, $"{(tape.Unit == LengthUnit.Inch ? bed.Area / 92_903.04 : bed.Area / 1e6):0.0} {(tape.Unit == LengthUnit.Inch ? "ft²" : "m²")}"), "trade press: a consultant's reading of ANSI A108.1A");
        }
    }
}
