using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Puts a strip's joints as asked, or as near to that as can be, and shows other ways beside it.</summary>
internal static class TrimWays
{
    private static readonly TrimJoints[] s_others = [TrimJoints.Staggered, TrimJoints.InLine, TrimJoints.Repeating, TrimJoints.Centred];

    private const int Shown = 4;

    /// <summary>The arrangement taken and all ways shown, that one's first; none where the line is too short for anything.</summary>
    public static (Arrangement? Taken, Sequence<TrimWay> Ways) Of(Strip strip, TrimLine line, TrimRemarks remarks)
    {
        var asked = strip.Edge.Trimmed!;
        var twice = (asked.Stagger ?? Length.Zero).Steps * 2;
        var where = $"{strip.Face.Face.Name}, {strip.Edge.Name}";
        if (!JointPlacing.CanBeMade(line))
        {
            if (!JointPlacing.CanBeMade(line with { Least = 1 }))
            {
                remarks.Add(FindingLevel.Warn, "trim-piece", where, $"Too little of this edge is left for a trim between its corners: {remarks.Say(Length.FromSteps(Math.Max(0, line.Length)))}.");
                return (null, []);
            }

            line = WithLess(strip, line, where, remarks);
        }

        var (joints, taken) = asked.Joints switch
        {
            TrimJoints.Unbroken => Unbroken(strip, line, where, remarks),
            _ => Best(line, asked.Joints, asked.Stagger, remarks.Tape) is { } best ? (asked.Joints, best) : Nearest(strip, line, twice, where, remarks),
        };
        if (taken is null) return (null, []);
        var ways = new List<(TrimJoints Joints, Arrangement Found)> { (joints, taken) };
        foreach (var other in s_others)
        {
            // What was taken as it was asked for, without a stagger said, would only be found again.
            if (other == joints && asked.Joints == joints && asked.Stagger is null) continue;
            if (ways.Count < Shown && line.Beside.Count > 0 && Best(line, other, null, remarks.Tape) is { } found && !ways.Exists(way => way.Found.Pieces.Equals(found.Pieces))) ways.Add((other, found));
        }

        if (joints != TrimJoints.InLine) remarks.Slipped(where, Stagger(taken, line));
        return (taken, ways.Select(way => Way(way.Joints, way.Found, line, strip, remarks)).ToSequence());
    }

    /// <summary>As asked; where no stagger was said joints keep as far off as does not look like a slip, if they can, be it at the price of a cut.</summary>
    private static Arrangement? Best(TrimLine line, TrimJoints joints, Length? stagger, Tape tape) =>
        (stagger is null && joints is TrimJoints.Staggered or TrimJoints.Repeating ? Snug(line, joints, 2 * TrimRemarks.Slip.Steps, tape) : null)
        ?? Snug(line, joints, 2 * (stagger ?? Length.Zero).Steps, tape);

    /// <summary>As the other; but nobody cuts a piece for less than half a mark: where whole pieces come so near, the last joint takes it.</summary>
    private static Arrangement? Snug(TrimLine line, TrimJoints joints, long twice, Tape tape)
    {
        var (step, sum) = (line.Stock + line.Joint, line.Length + line.Joint);
        var count = (sum + (step / 2)) / step;
        var over = sum - (count * step);
        if (count > 1 && over != 0 && Math.Abs(over) * 2 <= tape.Mark.Steps && over >= -line.Joint
            && JointPlacing.Best(line with { Length = line.Length - over }, joints, twice) is { Cost.Trimmed: 0 } whole)
        {
            var last = whole.Pieces[^1];
            return whole with { Pieces = [.. whole.Pieces.SkipLast(1), new(last.From + over, last.To + over)] };
        }

        return JointPlacing.Best(line, joints, twice);
    }

    /// <summary>A line that its least piece does not let be made: the longest least piece with which it can.</summary>
    private static TrimLine WithLess(Strip strip, TrimLine line, string where, TrimRemarks remarks)
    {
        var least = JointPlacing.Greatest(1, line.Least, shortest => JointPlacing.CanBeMade(line with { Least = shortest }));
        remarks.Add(
            FindingLevel.Warn, "trim-piece", where,
            $"A line of {remarks.Say(Length.FromSteps(line.Length))} cannot be made of pieces from {remarks.Say(strip.Product.Least)} to {remarks.Say(strip.Product.Stock)}; the longest shortest piece that can be had is {LengthText.Down(Length.FromSteps(least), remarks.Tape)}.",
            $"{remarks.Say(strip.Product.Least)} or more", LengthText.Down(Length.FromSteps(least), remarks.Tape));
        return line with { Least = least };
    }

    private static (TrimJoints Joints, Arrangement? Taken) Unbroken(Strip strip, TrimLine line, string where, TrimRemarks remarks)
    {
        if (line.Length <= line.Stock && TrimCost.Alone(line.Begin, line.End, line.Length < line.Stock) is { } cost) return (TrimJoints.Unbroken, new(cost, [new(0, line.Length)]));
        var isLong = line.Length > line.Stock;
        remarks.Add(
            FindingLevel.Warn, "trim-joints", where,
            isLong
                ? $"The line is {remarks.Say(Length.FromSteps(line.Length))} long and a piece of {strip.Product.Name} {remarks.Say(strip.Product.Stock)}: it cannot be had without a joint."
                : $"One sawn piece of {strip.Product.Name} between two open ends shows a sawn end: two stand there.",
            isLong ? remarks.Say(strip.Product.Stock) : "", isLong ? remarks.Say(Length.FromSteps(line.Length)) : "");
        return (TrimJoints.Free, JointPlacing.Best(line, TrimJoints.Free, 0));
    }

    private static (TrimJoints Joints, Arrangement? Taken) Nearest(Strip strip, TrimLine line, long twice, string where, TrimRemarks remarks)
    {
        var asked = strip.Edge.Trimmed!;
        var most = asked.Stagger is null ? 0 : JointPlacing.GreatestStagger(line) ?? 0;
        // Without a stagger said, what is taken instead must not look like a slip either.
        var taken = asked.Stagger is null ? Best(line, TrimJoints.Staggered, null, remarks.Tape) : JointPlacing.Best(line, TrimJoints.Staggered, Math.Min(twice, most));
        // Where no joint of the field is beside it a stagger is kept by any arrangement; what fails is the other thing asked.
        if (taken is not null && twice > most && line.Beside.Count > 0)
        {
            var tight = taken.Middles.MinBy(middle => line.Beside.Min(joint => Math.Abs(middle - joint.Middle)));
            var place = strip.At(TrimLine.Half(tight) - strip.Begin.Long, strip.Edge.Joint.Steps);
            remarks.Add(
                FindingLevel.Warn, "trim-joints", where,
                $"No arrangement keeps every joint {remarks.Say(asked.Stagger!.Value)} from those of the field; the greatest that can be had is {LengthText.Down(Length.FromSteps(most / 2), remarks.Tape)}, at the joint {remarks.Say(place.X)} from the left and {remarks.Say(place.Y)} up.",
                remarks.Say(asked.Stagger.Value), LengthText.Down(Length.FromSteps(most / 2), remarks.Tape));
        }
        else
        {
            var what = asked.Joints switch
            {
                TrimJoints.InLine => "No arrangement has every joint in line with one of the field's",
                TrimJoints.Repeating => "No arrangement repeats as the field does",
                _ => "No arrangement is alike from both ends",
            };
            // It may be had, only not so far off.
            if (asked.Stagger is { } far && JointPlacing.Best(line, asked.Joints, 0) is not null)
            {
                var nearer = JointPlacing.Greatest(0, twice, less => JointPlacing.Best(line, asked.Joints, less) is not null);
                what += $" and keeps every joint {remarks.Say(far)} from those of the field (so arranged they keep {LengthText.Down(Length.FromSteps(nearer / 2), remarks.Tape)})";
            }

            var nearest = taken is null ? "" : Stagger(taken, line) is { } off ? $"; the nearest is staggered, {LengthText.Down(off, remarks.Tape)} off" : "; there is no joint of the field beside it";
            remarks.Add(FindingLevel.Warn, "trim-joints", where, $"{what} with pieces from {remarks.Say(strip.Product.Least)} to {remarks.Say(strip.Product.Stock)}{nearest}.");
        }

        return (TrimJoints.Staggered, taken);
    }

    private static Length? Stagger(Arrangement found, TrimLine line) => found.Stagger(line) is { } twice ? Length.FromSteps(twice / 2) : null;

    private static TrimWay Way(TrimJoints joints, Arrangement found, TrimLine line, Strip strip, TrimRemarks remarks)
    {
        var lengths = found.Pieces.Select(piece => Length.FromSteps(piece.Length)).ToSequence();
        var stagger = Stagger(found, line);
        var keeps = (joints, stagger) switch
        {
            (_, null) when lengths.Count == 1 => "one piece, no joint",
            (TrimJoints.InLine, _) => "every joint in line with one of the field",
            (TrimJoints.Repeating, { } off) => $"pieces span whole courses, {remarks.Say(off)} past their joints",
            (TrimJoints.Centred, _) => "alike from both ends",
            (_, { } off) => $"no joint nearer than {LengthText.Narrowest(off, remarks.Tape)} to one of the field",
            _ => "no joint of the field beside it",
        };
        // Left and right with the finished side up; rounded down as they are cut.
        var ends = lengths.Count == 1 ? "" : $", left end {LengthText.Down(lengths[^1], remarks.Tape)}, right end {LengthText.Down(lengths[0], remarks.Tape)}; " + (strip.Product.Joint > Length.Zero ? $"joints of {remarks.Say(strip.Product.Joint)}" : "set without a joint");
        return new(joints, found.Cost.Cuts, found.Cost.Trimmed, lengths, joints == TrimJoints.InLine && stagger is not null ? Length.Zero : stagger, string.Create(
            CultureInfo.InvariantCulture, $"{keeps}; {Count(found.Cost.Cuts, "cut")}, {found.Cost.Trimmed} of {Count(found.Cost.Pieces, "piece")} trimmed{ends}"));
    }

    private static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? "" : "s")}");
}
