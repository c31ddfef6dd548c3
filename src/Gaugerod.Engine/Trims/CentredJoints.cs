using Gaugerod.Plane;

namespace Gaugerod.Engine.Trims;

/// <summary>Lines that are alike from both ends: half of one is searched and the other half is its mirror image.</summary>
internal static class CentredJoints
{
    /// <summary>The best; a trimmed piece between others only where the ends alone cannot make it up.</summary>
    public static Arrangement? Best(TrimLine line, long twice)
    {
        var clear = line.Clear(twice);
        var allowed = clear.And(Ranges.Of(clear.Parts.Select(part => (line.Length - line.Joint - part.To, line.Length - line.Joint - part.From))));
        return Best(line, allowed, wholeBetween: true) ?? Best(line, allowed, wholeBetween: false);
    }

    private static Arrangement? Best(TrimLine line, Ranges allowed, bool wholeBetween)
    {
        Arrangement?[] ways = [Best(line, allowed, wholeBetween, onJoint: true), Best(line, allowed, wholeBetween, onJoint: false)];
        return ways.OfType<Arrangement>().OrderBy(way => way.Cost).ThenByDescending(way => way.Shortest(line)).FirstOrDefault();
    }

    private static Arrangement? Best(TrimLine line, Ranges allowed, bool wholeBetween, bool onJoint)
    {
        if (Find(line.Least, null) is not { Cost: var cost }) return null;
        var least = JointPlacing.GreatestLeast(line, cost, longer => Find(longer, cost) is not null);
        return new(cost, Mirrored(line, Find(least, cost)!.Places, onJoint));

        PlacesFound? Find(long shortest, TrimCost? most) => PlaceSearch.Find(Half(line, shortest, allowed, wholeBetween, onJoint ? OnJoint(line) : OnPiece(line, shortest, wholeBetween)), most);
    }

    /// <summary>A joint on the middle.</summary>
    private static Goal[] OnJoint(TrimLine line)
    {
        var place = TrimLine.Half(line.Length - line.Joint);
        return [new(place, place, default)];
    }

    /// <summary>A piece on the middle; a whole one may be a step short of the room there, which goes into a joint.</summary>
    private static Goal[] OnPiece(TrimLine line, long least, bool isWhole)
    {
        var room = line.Length - (2 * line.Joint);
        var whole = TrimLine.Half(room - line.Stock);
        var middle = new Goal(whole, whole, TrimCost.Between(false));
        return isWhole ? [middle] : [middle, new(-TrimLine.Half(line.Stock - 1 - room), TrimLine.Half(room - least), TrimCost.Between(true))];
    }

    /// <summary>Half a line, every piece counted twice.</summary>
    private static PlaceProblem Half(TrimLine line, long least, Ranges allowed, bool wholeBetween, Goal[] goals) => new(
        line.Stock, line.Joint, least + Math.Max(line.BeginTakes, line.EndTakes), least, allowed, (Ends(line, false), Ends(line, true)),
        (TrimCost.Between(false) + TrimCost.Between(false), TrimCost.Between(true) + TrimCost.Between(true)), goals)
    {
        WholeBetween = wholeBetween,
    };

    private static TrimCost Ends(TrimLine line, bool trimmed) => TrimCost.AtEnd(line.Begin, trimmed) + TrimCost.AtEnd(line.End, trimmed);

    private static Sequence<Stretch> Mirrored(TrimLine line, IReadOnlyList<long> places, bool onJoint)
    {
        // What follows the last joint found is the middle piece, or begins the other half.
        var half = Arrangement.Between(line.Length, line.Joint, places).SkipLast(1).ToList();
        var other = half.Select(piece => new Stretch(line.Length - piece.To, line.Length - piece.From)).Reverse();
        if (onJoint) return half.Concat(other).ToSequence();
        var from = places[^1] + line.Joint;
        return [.. half, new(from, from + Math.Min(line.Length - from - from, line.Stock)), .. other];
    }
}
