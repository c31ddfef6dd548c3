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

        Say("a floor and its four walls, forty readings, weighed together and all five drawn", () =>
        {
            var whole = JoinedSurveys.Of(FloorAndWalls());
            foreach (var face in whole[0].Faces) SurveyView.Of(whole[0], face.Face, Tape.Millimetres);
        });

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

    /// <summary>A floor of 3 m by 2.4 m, corner to corner and two corners checked, and four walls by their feet, heads, heights, leans and diagonals.</summary>
    private static Sequence<FaceSurveyed> FloorAndWalls()
    {
        Sequence<SurveyCorner> corners = [.. "ABCD".Select(name => new SurveyCorner($"{name}", false, null))];
        var (faces, taken) = (new List<FaceSurveyed>(), 0);
        faces.Add(new("floor", 0, new(corners, [], [.. Box(3000, 2400), Square(1), Square(3)])));
        for (var i = 0; i < 4; i++)
        {
            var wall = Box(i % 2 == 0 ? 3000 : 2400, 2450);
            SurveyReading[] level = [Held(ReadAs.Plumb, 0, 1), Held(ReadAs.Level, 0, 3)];
            faces.Add(new($"wall {i}", i + 1, new(corners, [], [.. wall, .. level]) { Same = [new(0, "floor", i, Mm(1.5))] }));
        }

        return faces.ToSequence();

        SurveyReading[] Box(double wide, double high) =>
        [
            Read(0, 1, wide), Read(1, 2, high), Read(2, 3, wide), Read(3, 0, high), Read(0, 2, Math.Sqrt((wide * wide) + (high * high))), Read(1, 3, Math.Sqrt((wide * wide) + (high * high))),
        ];

        SurveyReading Read(int from, int to, double mm) => new(ReadAs.Straight, SurveySpot.Of(from), SurveySpot.Of(to), Mm(mm + (taken++ % 5) - 2), Mm(1.5));

        SurveyReading Held(ReadAs way, int from, int to) => new(way, SurveySpot.Of(from), SurveySpot.Of(to), Mm((taken++ % 5) - 2), Mm(1.5));

        SurveyReading Square(int corner) => new(ReadAs.Straight, new(corner, (corner + 1) % 4, Mm(1200)), new(corner, (corner + 3) % 4, Mm(900)), Mm(1500 + (taken++ % 3) - 1), Mm(1.5));
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
