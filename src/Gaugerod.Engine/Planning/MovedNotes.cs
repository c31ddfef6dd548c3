using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says what was moved to meet joints, so that it is built there.</summary>
internal static class MovedNotes
{
    private const string Rule = "moved";

    public static Finding Left(string run, string why) => new(FindingLevel.Note, Rule, run, $"What may be moved was left as asked: {why}", "", "", Remarks.NoSource);

    /// <summary>What stands elsewhere in a job than in another.</summary>
    public static IEnumerable<Finding> Of(Job before, Job after)
    {
        var tape = before.Tape;
        string Say(Length length) => LengthText.Finer(length, tape);
        foreach (var (was, now) in before.Faces.Zip(after.Faces))
        {
            foreach (var (old, opening) in was.Openings.Zip(now.Openings).Where(pair => pair.First != pair.Second))
            {
                var (from, to) = (old.Ring.Bounds, opening.Ring.Bounds);
                yield return Moved(now.Name, opening.Name, string.Create(CultureInfo.InvariantCulture,
                    $"{Say(to.Left)} from the left, {Say(to.Bottom)} up, {Say(to.Width)} by {Say(to.Height)}; asked was {Say(from.Left)}, {Say(from.Bottom)}, {Say(from.Width)} by {Say(from.Height)}"));
            }

            foreach (var (old, zone) in was.Zones.Zip(now.Zones).Where(pair => pair.First != pair.Second))
            {
                if (old is Zone.Strip a && zone is Zone.Strip b) yield return Moved(now.Name, b.Name, $"from {Say(b.From)} up; asked was {Say(a.From)}");
            }

            if (was.Shape is not FaceShape.Read one || now.Shape is not FaceShape.Read other) continue;
            foreach (var (old, fixture) in one.Fixtures.Zip(other.Fixtures).Where(pair => pair.First != pair.Second))
            {
                yield return Moved(now.Name, fixture.Name, Where(old, fixture, Say));
            }
        }
    }

    private static string Where(Fixture was, Fixture now, Func<Length, string> say)
    {
        var (places, asked) = (new List<string>(), new List<string>());
        if (now.HeightLeft != was.HeightLeft) (places, asked) = ([$"{say(now.HeightLeft)} high"], [say(was.HeightLeft)]);
        if (now.From != was.From)
        {
            places.Add($"from {say(now.From)}");
            asked.Add(say(was.From));
        }

        if (now.To is { } to && was.To is { } old && to != old)
        {
            places.Add($"to {say(to)} from the left");
            asked.Add(say(old));
        }

        return $"{string.Join(", ", places)}; asked was {string.Join(", ", asked)}";
    }

    private static Finding Moved(string face, string name, string where) =>
        new(FindingLevel.Note, Rule, $"{name} on {face}", $"Moved to meet the joints: {where}. Build it so before tiling.", "", "", Remarks.NoSource);
}
