using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Bench;

/// <summary>What measuring costs: a room of forty readings weighed, and the rest of a sample planned again from what is set.</summary>
internal static class MeasureReport
{
    private const int Rounds = 50;

    public static void Print(string sample)
    {
        var survey = Room();
        Say($"a room of {survey.Corners.Count} corners and {survey.Readings.Count} readings drawn and weighed", () => SurveyToOutline.Draw(survey, new("room", "faces[0]", Tape.Millimetres)));

        var job = Subjects.Sample(sample);
        var plan = Planner.Plan(job);
        var run = plan.Runs[0];
        var face = run.Faces[^1];
        var third = face.Pieces.OrderBy(piece => piece.Course).First(piece => piece.Course >= 3);
        var set = run with { Request = run.Request with { Set = [new(face.Face.Name, third.Course, third.Cell.Top + Length.FromMillimetres(4), null)] } };
        Say($"{sample}: the rest of {face.Face.Name} planned again from course {third.Course}", () => Again.Steps(job, set).Last());
        Say($"{sample}: the whole job planned", () => Planner.Plan(job));
    }

    /// <summary>A room of eight corners, an alcove cut out of it, with all that a tape reaches up to forty readings, each a little off.</summary>
    private static FaceSurvey Room()
    {
        double[] places = [0, 0, 4000, 0, 4000, 1500, 5200, 1500, 5200, 3000, 4000, 3000, 4000, 4500, 0, 4500];
        var (corners, readings) = (new List<SurveyCorner>(), new List<SurveyReading>());
        for (var i = 0; i < 8; i++) corners.Add(new(((char)('A' + i)).ToString(), i is 2 or 5, null));
        for (var apart = 1; apart < 8; apart++)
        {
            for (var i = 0; i < 8 && readings.Count < 40; i++)
            {
                var j = (i + apart) % 8;
                if (apart > 4 || (apart == 4 && i >= 4)) continue;
                var far = Math.Sqrt(Math.Pow(places[2 * i] - places[2 * j], 2) + Math.Pow(places[(2 * i) + 1] - places[(2 * j) + 1], 2));
                readings.Add(new(ReadAs.Straight, SurveySpot.Of(i), SurveySpot.Of(j), Mm(far + (((i * 7) + j) % 5) - 2), Mm(1.5)));
            }
        }

        // What is missing to forty are sides read again and corners checked by three, four and five.
        for (var i = 0; readings.Count < 40; i++)
        {
            readings.Add(new(ReadAs.Straight, new(i % 8, (i + 1) % 8, Mm(900)), new(i % 8, (i + 7) % 8, Mm(1200)), Mm(1500 + (i % 3) - 1), Mm(1.5)));
        }

        return new(corners.ToSequence(), [], readings.ToSequence());
    }

    private static void Say(string what, Action work)
    {
        var cold = Stopwatch.StartNew();
        work();
        cold.Stop();
        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var clock = Stopwatch.StartNew();
            work();
            times[i] = clock.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: first {cold.Elapsed.TotalMilliseconds:0.0} ms, median {times[Rounds / 2]:0.00} ms, least {times[0]:0.00} ms"));
    }

    private static Length Mm(double mm) => Length.FromSteps((long)Math.Round(mm * 3200));
}
