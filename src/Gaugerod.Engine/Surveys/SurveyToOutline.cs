using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>What came of a survey.</summary>
/// <param name="Outline">The shape, counter-clockwise, its first corner at the origin; null when there are faults.</param>
/// <param name="LevelLine">How high above the first corner the level line runs; null when nothing was read to it.</param>
/// <param name="Weighed">What became of the readings; null when they could not be weighed.</param>
/// <param name="Findings">What was assumed, and where readings disagree.</param>
/// <param name="Faults">What cannot be used.</param>
public sealed record SurveyedOutline(Ring? Outline, Length? LevelLine, WeighedSurvey? Weighed, Sequence<Finding> Findings, Sequence<Fault> Faults)
{
    /// <summary>Where corners and spots may stand, for a look at a shape that is not settled yet: every corner square, a metre where nothing was read. Empty where it does not come round.</summary>
    public Sequence<PlacedSpot> Rough { get; init; } = [];
}

/// <summary>Draws a shape from its survey.</summary>
internal static class SurveyToOutline
{
    /// <summary>The shape of one of the faces whose readings are weighed together.</summary>
    public static SurveyedOutline Draw(JoinedSurveys surveys, ReadingPlace place) => Draw(surveys.Network, JoinedSurveys.IndexOf(surveys.Faces, place.Face), place);

    /// <summary>The shape of a face by itself.</summary>
    public static SurveyedOutline Draw(FaceSurvey survey, ReadingPlace place) => Draw(JoinedSurveys.Alone(place.Face, survey).Network, 0, place);

    private static SurveyedOutline Draw(JoinedNetwork room, int at, ReadingPlace place)
    {
        var part = room.Parts[at];
        var survey = part.Survey;

        // Where one face of a room cannot be settled, it says so by itself, and so do the others.
        var adjusted = room.Adjusted;
        if (adjusted is null && room.Parts.Length > 1) return Draw(survey, place);
        if (room.Starts[at] is not { } start) return Refused(Turns(survey, place));
        var words = new SurveyWords(room, at, place);
        if (adjusted is null) return Refused(TooFew(survey, room.Settled!, start, words, place)) with { Rough = Rough(survey, start) };

        var suspects = Suspects.Of(adjusted).Where(i => i < room.Read.Readings.Count).ToArray();
        var placed = part.PlacesOf(adjusted.Places);
        var moved = Outwards.Move(placed, part.Corners, survey.ComesOff);
        var ring = Ring(moved, part.Corners);
        var findings = new SurveyFindings(room, part, suspects, words, place);
        if (SurveyFaults.CannotClose(room, part, suspects, ring, place) is { } fault) return Refused(fault) with { Weighed = adjusted.IsSettled ? Doubted(findings.Weighed(), part, suspects, adjusted) : null, Rough = Rough(survey, start) };

        var line = part.Spots > survey.LevelLine ? SurveyNetwork.Rounded(placed[(2 * survey.LevelLine) + 1] - moved[1]) : (Length?)null;
        return new(ring, line, findings.Weighed(), findings.All().ToSequence(), []);
    }

    private static SurveyedOutline Refused(Fault fault) => new(null, null, null, [], [fault]);

    private static WeighedSurvey Doubted(WeighedSurvey weighed, NetworkPart part, int[] suspects, Adjusted adjusted) =>
        weighed with { Readings = weighed.Readings.Select((reading, i) => suspects.Contains(part.Reading + i) ? reading with { ByOthers = SurveyFaults.Without(adjusted, part.Reading + i) } : reading).ToSequence() };

    private static Sequence<PlacedSpot> Rough(FaceSurvey survey, double[] places) =>
        Enumerable.Range(0, survey.LevelLine).Select(i => new PlacedSpot(survey.NameOf(i), new(SurveyNetwork.Rounded(places[2 * i]), SurveyNetwork.Rounded(places[(2 * i) + 1])))).ToSequence();

    // Places on a face count from its first corner, wherever that comes to stand when all is off.
    private static Ring Ring(double[] places, int corners)
    {
        var points = new Point[corners];
        for (var i = 0; i < corners; i++) points[i] = new(SurveyNetwork.Rounded(places[2 * i] - places[0]), SurveyNetwork.Rounded(places[(2 * i) + 1] - places[1]));
        return new(points.ToSequence());
    }

    private static Fault Turns(FaceSurvey survey, ReadingPlace place)
    {
        var outside = survey.Corners.Count(corner => corner.IsOutside);
        return new(
            $"{place.Path}.survey.corners",
            string.Create(CultureInfo.InvariantCulture, $"{survey.Corners.Count} corners, {outside} of them outside corners"),
            "four more inside corners than outside corners, as square corners need to come round",
            "say which corners are outside corners, or give every corner with \"near\": [x, y], roughly");
    }

    private static Fault TooFew(FaceSurvey survey, Network network, double[] start, SurveyWords words, ReadingPlace place)
    {
        var missing = new List<string>();
        for (var spot = 1; spot < survey.LevelLine; spot++)
        {
            for (var from = 0; from < spot; from++)
            {
                var more = Reading.Length(from, spot, 0, Assumed.Accuracy);
                if (!Assumed.SaysMore(network, more, start)) continue;
                network = network.With(more);
                missing.Add(words.Said(more));
            }
        }

        var all = string.Join(", ", missing);
        return new(
            $"{place.Path}.survey.readings", "too few readings to settle the shape, even with square corners",
            missing.Count == 0 ? "readings to every corner and spot" : "one reading more for every side that is open", missing.Count == 0 ? null : $"read {all}");
    }
}
