using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>Where one face's corners and readings stand among those of a room.</summary>
/// <param name="Of">The face.</param>
/// <param name="Spot">Its first corner.</param>
/// <param name="Spots">How many corners and spots it has, the level line among them.</param>
/// <param name="Reading">Its first reading.</param>
/// <param name="Shared">The first of the sides that it says are shared, among the readings.</param>
/// <param name="Sides">Which of the survey's shared sides those are.</param>
internal sealed record NetworkPart(FaceSurveyed Of, int Spot, int Spots, int Reading, int Shared, int[] Sides)
{
    public FaceSurvey Survey => Of.Survey;

    public int Corners => Survey.Corners.Count;

    /// <summary>The x and y of its own corners and spots, of those of all.</summary>
    public double[] PlacesOf(double[] places) => places[(2 * Spot)..(2 * (Spot + Spots))];

    public bool HasSpot(int at) => at >= Spot && at < Spot + Spots;

    /// <summary>Whether a reading was taken on this face, or is a side that it says is shared.</summary>
    public bool HasReading(int i) => (i >= Reading && i < Reading + Survey.Readings.Count) || (i >= Shared && i < Shared + Sides.Length);
}

/// <summary>
/// The corners and readings of a room's faces in one network. Every face keeps a first corner of its own that all is counted from:
/// faces know of each other only by the lengths of the sides they share, which is all that a tape tells of both.
/// </summary>
internal sealed class JoinedNetwork
{
    private JoinedNetwork(NetworkPart[] parts, Network read, double[]?[] starts)
    {
        (Parts, Read, Starts) = (parts, read, starts);
        if (Array.Exists(starts, start => start is null)) return;
        var start = starts.SelectMany(of => of!).ToArray();
        Settled = Assumed.Settle(read, start, parts);
        if (Assumed.Settles(Settled, start)) Adjusted = Adjustment.Of(Settled, start);
    }

    public NetworkPart[] Parts { get; }

    /// <summary>What was read: every face's readings, then the sides they share.</summary>
    public Network Read { get; }

    /// <summary>Where each face's corners may stand; null of one whose turns do not bring it round.</summary>
    public double[]?[] Starts { get; }

    /// <summary>The same with what is assumed, these last; null where a face has no start.</summary>
    public Network? Settled { get; }

    /// <summary>What became of all; null where not even what is assumed settles it.</summary>
    public Adjusted? Adjusted { get; }

    public static JoinedNetwork Of(Sequence<FaceSurveyed> faces)
    {
        var networks = faces.Select(face => SurveyNetwork.Of(face.Survey)).ToArray();
        var (parts, spot, reading, shared) = (new NetworkPart[networks.Length], 0, 0, networks.Sum(network => network.Readings.Count));
        var (readings, held) = (new List<Reading>(), new List<bool>());
        for (var i = 0; i < parts.Length; i++)
        {
            var same = faces[i].Survey.Same;
            int[] sides = [.. Enumerable.Range(0, same.Count).Where(k => Shares(faces, i, same[k])).DistinctBy(k => same[k] with { Within = default })];
            parts[i] = new(faces[i], spot, networks[i].Corners, reading, shared, sides);
            readings.AddRange(networks[i].Readings.Select(of => of.Past(spot)));
            held.AddRange(networks[i].Fixed);
            (spot, reading, shared) = (spot + networks[i].Corners, reading + networks[i].Readings.Count, shared + sides.Length);
        }

        foreach (var part in parts) readings.AddRange(part.Sides.Select(k => part.Survey.Same[k]).Select(side => Alike(part, side, parts[JoinedSurveys.IndexOf(faces, side.Face)])));
        return new(parts, new(spot, readings, [.. held]), [.. networks.Select((network, i) => SurveyNetwork.Start(faces[i].Survey, network))]);
    }

    private static Reading Alike(NetworkPart part, SharedSide side, NetworkPart other) => new(
        ReadingOf.Alike, Side(other, side.Other), Side(part, side.Side), 0, SurveyNetwork.Millimetres(Surest(part, side, other)));

    // Said more than once, the surest holds.
    private static Length Surest(NetworkPart part, SharedSide side, NetworkPart other) => part.Survey.Same.Where(same => Is(same, side.Side, side.Face, side.Other))
        .Concat(other.Survey.Same.Where(back => Is(back, side.Other, part.Of.Face, side.Side))).Min(same => same.Within);

    private static bool Is(SharedSide side, int own, string face, int other) => side.Side == own && side.Other == other && string.Equals(side.Face, face, StringComparison.Ordinal);

    private static Spot Side(NetworkPart part, int from) => new(part.Spot + from, part.Spot + ((from + 1) % part.Corners), 0);

    // Said twice, or on both faces, it is still one thing.
    private static bool Shares(Sequence<FaceSurveyed> faces, int at, SharedSide side)
    {
        var other = JoinedSurveys.IndexOf(faces, side.Face);
        return other >= 0 && other != at && (other > at || !faces[other].Survey.Same.Any(back => Is(back, side.Other, faces[at].Face, side.Side)));
    }
}
