using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>A thing that was left open by a range and is built, or framed, before tiling: where it is to stand.</summary>
/// <param name="Face">The face it is on.</param>
/// <param name="Words">What to do, with every measure that places it: <c>Frame niche: left 600 mm, bottom 1205 mm, 300 mm wide, 600 mm high</c>.</param>
/// <param name="From">What those are measured from, and what was asked where it was moved.</param>
public sealed record ToBuild(string Face, string Words, string From)
{
    /// <summary>All things that a job left open, as they were settled.</summary>
    /// <param name="asked">The job as it was asked.</param>
    /// <param name="settled">The same with its things where the plan has them.</param>
    internal static IEnumerable<ToBuild> All(Job asked, Job settled)
    {
        var tape = settled.Tape;
        foreach (var (was, now) in asked.Faces.Zip(settled.Faces))
        {
            foreach (var (old, opening) in was.Openings.Zip(now.Openings))
            {
                if (old.Range is { } range && (range.Sideways ?? range.Bottom ?? range.Width ?? range.Height) is not null) yield return Of(now.Name, $"Frame {opening.Name}", Opening(opening, range), Opening(old, range), range.Under, opening.Depth is null ? "" : " Its board lines it: frame it wider and higher by the board all round, as the sheet of the boards says.");
            }

            foreach (var (old, zone) in was.Zones.Zip(now.Zones))
            {
                if (old is Zone.Strip { Range: not null } a && zone is Zone.Strip b) yield return Of(now.Name, $"Lay {b.Name}", Band(b), Band(a), b.ReadFrom);
            }

            if (was.Shape is not FaceShape.Read one || now.Shape is not FaceShape.Read other) continue;
            foreach (var (old, fixture) in one.Fixtures.Zip(other.Fixtures))
            {
                if (old.Range is { } range && (range.Height ?? range.From ?? range.To) is not null) yield return Of(now.Name, $"Build {fixture.Name}", Bench(fixture, range), Bench(old, range), range.Under);
            }
        }

        string Say(Length length) => LengthText.Nearest(length, tape);

        string Opening(Opening opening, OpeningRange range)
        {
            var box = opening.Ring.Bounds;
            return $"left {Say(box.Left)}, bottom {Say(box.Bottom - range.Under)}, {Say(box.Width)} wide, {Say(box.Height)} high";
        }

        string Band(Zone.Strip strip) => strip.To is { } to
            ? $"from {Say(strip.From - strip.ReadFrom)} to {Say(to - strip.ReadFrom)} up"
            : $"from {Say(strip.From - strip.ReadFrom)} up";

        string Bench(Fixture fixture, FixtureRange range)
        {
            var (left, right) = (Say(fixture.HeightLeft - range.Under), Say(fixture.HeightRight - range.Under));
            var high = string.Equals(left, right, StringComparison.Ordinal) ? $"{left} high" : $"{left} high at its left end, {right} at its right";
            return fixture.To is { } to ? $"from {Say(fixture.From)} to {Say(to)}, {high}" : $"from {Say(fixture.From)} to the right corner, {high}";
        }
    }

    private static ToBuild Of(string face, string what, string places, string asked, Length under, string lined = "")
    {
        var heights = under == Length.Zero ? "the foot of that corner" : "the struck level line";
        var moved = string.Equals(places, asked, StringComparison.Ordinal) ? "It stands as asked." : string.Create(CultureInfo.InvariantCulture, $"Moved to meet the joints; asked was {asked}.");
        return new(face, $"{what}: {places}", $"Sideways from the left corner, heights from {heights}, to where its tile's edge is measured.{lined} {moved}");
    }
}
