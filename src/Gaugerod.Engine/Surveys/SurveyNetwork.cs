using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>Turns a survey into corners and readings in mm, and back.</summary>
internal static class SurveyNetwork
{
    private const double Step = 3200;

    public static double Millimetres(Length length) => length.Steps / Step;

    public static Length Rounded(double millimetres) => Plane.Shapes.Grid.Nearest(millimetres * Step);

    public static Network Of(FaceSurvey survey)
    {
        var line = survey.Readings.Any(r => r.First.At == survey.LevelLine || r.Second.At == survey.LevelLine);
        var corners = survey.LevelLine + (line ? 1 : 0);
        var held = new bool[2 * corners];
        (held[0], held[1], held[3]) = (true, true, !survey.IsTied);
        if (line) held[2 * survey.LevelLine] = true;
        return new(corners, [.. survey.Readings.Select(Of)], held);
    }

    /// <summary>Where the corners may stand: as they were given, or every corner square; null when it cannot come round so.</summary>
    public static double[]? Start(FaceSurvey survey, Network network)
    {
        if ((survey.Corners.Any(corner => corner.Near is null) ? StartingShape.Of(network, [.. survey.Corners.Select(corner => corner.IsOutside)]) : Given(survey, network)) is not { } places) return null;
        if (!survey.IsTied) Lay(places, network.Corners);
        return places;
    }

    private static double[] Given(FaceSurvey survey, Network network)
    {
        var places = new double[2 * network.Corners];
        var origin = survey.Corners[0].Near!.Value;
        for (var i = 0; i < survey.Corners.Count; i++)
        {
            var near = survey.Corners[i].Near!.Value;
            (places[2 * i], places[(2 * i) + 1]) = (Millimetres(near.X - origin.X), Millimetres(near.Y - origin.Y));
        }

        var (x, y) = (Middle(places, survey.Corners.Count, 0), Middle(places, survey.Corners.Count, 1));
        for (var spot = survey.Corners.Count; spot < network.Corners; spot++) (places[2 * spot], places[(2 * spot) + 1]) = (spot == survey.LevelLine ? 0 : x, y);
        return places;
    }

    public static Reading Of(SurveyReading reading) => new(
        reading.As switch
        {
            ReadAs.Level => ReadingOf.Across,
            ReadAs.Plumb => ReadingOf.Up,
            ReadAs.Off => ReadingOf.Off,
            ReadAs.Strings => ReadingOf.Crossing,
            _ => ReadingOf.Length,
        },
        reading.First.Spot, reading.Second.Spot, Millimetres(reading.Value), Millimetres(reading.Accuracy)) { Third = reading.Third.Spot };

    /// <summary>A reading that is still to be taken, as a survey holds it.</summary>
    public static SurveyReading Asked(in Reading reading) => new(
        reading.Of switch { ReadingOf.Across => ReadAs.Level, ReadingOf.Up => ReadAs.Plumb, ReadingOf.Off => ReadAs.Off, ReadingOf.Crossing => ReadAs.Strings, _ => ReadAs.Straight },
        Spot(reading.First), Spot(reading.Second), Length.Zero, Rounded(reading.Accuracy)) { Third = Spot(reading.Third) };

    private static SurveySpot Spot(Spot spot) => new(spot.From, spot.Towards, Rounded(spot.Along));

    private static double Middle(double[] places, int corners, int way)
    {
        var sum = 0.0;
        for (var i = 0; i < corners; i++) sum += places[(2 * i) + way];
        return sum / corners;
    }

    // The first side lies level where nothing else says how the shape is turned.
    private static void Lay(double[] places, int corners)
    {
        var (ux, uy) = (places[2], places[3]);
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        if (length == 0) return;
        (ux, uy) = (ux / length, uy / length);
        for (var i = 0; i < corners; i++)
        {
            var (x, y) = (places[2 * i], places[(2 * i) + 1]);
            (places[2 * i], places[(2 * i) + 1]) = ((x * ux) + (y * uy), (y * ux) - (x * uy));
        }

        places[3] = 0;
    }
}
