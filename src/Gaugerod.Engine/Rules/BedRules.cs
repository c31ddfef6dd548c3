using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether a bed falls as showers are to, how thick it may be, and what it takes.</summary>
internal static class BedRules
{
    private const string Rule = "bed";

    internal static IEnumerable<Finding> Findings(Bed bed, Tape tape, Region? region = null)
    {
        var (face, request) = (bed.Face, bed.Request);
        var bags = bed.Bags is { } count ? string.Create(CultureInfo.InvariantCulture, $", {count} {(count == 1 ? "bag" : "bags")}{(request.Bag!.Name is { } name ? $" of {name}" : "")} at {Amounts.Volume(request.Bag.Litres * 1e6, tape)} each, with nothing for waste") : "";
        yield return new(
            FindingLevel.Note, Rule, face,
            $"The bed takes {Amounts.Volume(bed.Volume, tape)}{bags}, and weighs about {Amounts.Weight(bed.Kilograms, tape)}. It is {Shown.Fine(bed.Least, tape)} thick at {bed.Low} and {Shown.Fine(bed.Greatest, tape)} at the most, over a level base. Whether the floor carries that is for whoever answers for the structure.",
            "", Amounts.Volume(bed.Volume, tape), request.Density is null ? "reckoned; 144 lb in a cubic foot (trade press, an answer of the Tile Council's experts, 2021)" : "reckoned; weight as given");

        if (bed.Sand is { } sand && request.Bag?.Sand is { } more)
        {
            yield return new(
                FindingLevel.Note, "bed-mix", face, $"To each bag of {Amounts.Weight(more.Kilograms, tape)} go {Amounts.Weight(more.Added, tape)} of dry sand, {Amounts.Weight(sand, tape)} in all: one part of cement to {Whole(more.To)} of sand, by weight, from one to {Whole(more.From)}. Where the mix's own instructions say another, they come first.",
                "", $"1:{Whole(more.To)} by weight", "a setter's page on the mix for shower beds; 60 lb at 1:3 and 30 lb of sand are 1:5");
        }

        const double Slack = 1e-9;
        var (least, most) = (LimitTable.For(region, LimitKeys.FallLeast), LimitTable.For(region, LimitKeys.FallMost));
        var gentle = bed.LeastFall < least.Least.Part - Slack;
        yield return new(
            gentle ? FindingLevel.Warn : FindingLevel.Note, Rule, face, "Its gentlest fall, from its farthest place." + (gentle ? least.Do : ""),
            $"at least {Amounts.Fall(least.Least.Part, tape)} (printed as {least.Limit.As})", Amounts.Fall(bed.LeastFall, tape), least.Source);
        var steep = bed.GreatestFall > most.Most.Part + Slack;
        var from = bed.SteepestFrom is { } wall ? $", from {wall}" : "";
        yield return new(
            steep ? FindingLevel.Warn : FindingLevel.Note, Rule, face,
            steep && request.Perimeter == Perimeter.Level
                ? $"Its steepest fall{from}: the edge is level, and this is nearest. A drain nearer to the middle, or \"perimeter\": \"constant\", makes it gentler."
                : $"Its steepest fall{from}.",
            $"at most {Amounts.Fall(most.Most.Part, tape)} (printed as {most.Limit.As})", Amounts.Fall(bed.GreatestFall, tape), most.Source);
        foreach (var finding in Thickness(bed, tape, region)) yield return finding;
        if (request.Curb is { } curb)
        {
            var limit = LimitTable.For(region, LimitKeys.Curb);
            var isOff = curb < limit.LeastOn(tape) || curb > limit.Most.Length;
            yield return new(
                isOff ? FindingLevel.Warn : FindingLevel.Note, Rule, face, "How high the top of the curb is over the top of the drain." + (isOff ? limit.Do : ""),
                $"from {Shown.Fine(limit.LeastOn(tape), tape)} to {Shown.Fine(limit.Most.Length, tape)}", Shown.Fine(curb, tape), limit.Source);
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

    private static IEnumerable<Finding> Thickness(Bed bed, Tape tape, Region? region)
    {
        var (liner, strict, thick, bare) = (LimitTable.For(region, LimitKeys.OverLiner), LimitTable.For(region, LimitKeys.OverLinerStrict), LimitTable.For(region, LimitKeys.BedThick), LimitTable.For(region, LimitKeys.BedReinforced));
        // What falls to an edge is a bench, a sill or a curb: there is neither a liner nor a drain.
        if (bed.Request.Toward is null && bed.Least > Length.Zero && bed.Least < strict.LeastOn(tape))
        {
            yield return new(
                bed.Least < liner.LeastOn(tape) ? FindingLevel.Warn : FindingLevel.Note, Rule, bed.Face, "How thick it is at the drain, where it lies over a liner. A bonded bed may feather out, as its instructions say.",
                $"at least {Shown.Fine(liner.LeastOn(tape), tape)}, and {Shown.Fine(strict.LeastOn(tape), tape)} as a consultant reads A108.1A", Shown.Fine(bed.Least, tape), liner.Source);
        }

        if (bed.Greatest > thick.Most.Length)
        {
            yield return new(FindingLevel.Warn, Rule, bed.Face, "How thick it is at the most. Thicker beds need whoever specifies them to agree.", $"{Shown.Fine(thick.LeastOn(tape), tape)} to {Shown.Fine(thick.Most.Length, tape)}", Shown.Fine(bed.Greatest, tape), thick.Source);
        }

        if (bed.Area > bare.Most.Area)
        {
            yield return new(FindingLevel.Note, Rule, bed.Face, "A bed this large is reinforced.", $"reinforced over {bare.Most} (6 m²)", string.Create(CultureInfo.InvariantCulture, $"{(tape.Unit == LengthUnit.Inch ? bed.Area / 92_903.04 : bed.Area / 1e6):0.0} {(tape.Unit == LengthUnit.Inch ? "ft²" : "m²")}"), bare.Source);
        }
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
