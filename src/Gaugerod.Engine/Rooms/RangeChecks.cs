using System.Globalization;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// What may be moved stays on its face. Either end of a range must be a measure that the thing can have there: with its other
/// measures as small, or as far left and down, as they may be, it reaches no further than the face does as measured, and where its
/// studs are told no further than they let it.
/// </summary>
internal static class RangeChecks
{
    /// <summary>Refuses ranges that reach beyond the face, with the nearest that does not.</summary>
    public static void Check(Face face, string path, Remarks remarks)
    {
        if (!HasRange(face) || BoundsOf(face, path, remarks.Tape) is not { } bounds) return;
        var checks = new Within(face.Name, bounds, remarks);
        for (var i = 0; i < face.Openings.Count; i++)
        {
            if (face.Openings[i].Range is { } range) checks.Check(range, face.Openings[i].Ring.Bounds, At("openings", i));
        }

        for (var i = 0; i < face.Zones.Count; i++)
        {
            if (face.Zones[i] is not Zone.Strip { Range: { } range } strip) continue;
            var deep = strip.To is { } head ? head - strip.From : Length.Zero;
            checks.Height(At("zones", i), range, strip.From, bounds.Bottom, bounds.Top - deep, strip.ReadFrom);
        }

        if (face.Shape is not FaceShape.Read read) return;
        for (var i = 0; i < read.Fixtures.Count; i++)
        {
            if (read.Fixtures[i].Range is { } range) checks.Check(range, read.Fixtures[i], At("fixtures", i));
        }

        string At(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}.{list}[{index}].range");
    }

    private static bool HasRange(Face face) => face.Openings.Any(opening => opening.Range is not null) || face.Zones.Any(zone => zone is Zone.Strip { Range: not null })
        || (face.Shape is FaceShape.Read read && read.Fixtures.Any(fixture => fixture.Range is not null));

    /// <summary>How far the face reaches; a fixture takes nothing off, since it may be what moves.</summary>
    private static Box? BoundsOf(Face face, string path, Tape tape) => face.Shape switch
    {
        FaceShape.Outline given => given.Ring.Bounds,
        FaceShape.Surveyed given => given.Draw(new(face.Name, path, tape)).Outline?.Bounds,
        FaceShape.Read read => ReadingsToOutline.Draw(read.Readings, [], new(face.Name, path, tape)).Outline?.Bounds,
        _ => null,
    };

    private sealed class Within(string face, Box bounds, Remarks remarks)
    {
        private string OnFace => "on " + face;

        public void Check(OpeningRange range, Box asked, string path)
        {
            var (left, bottom) = (range.Sideways?.Least ?? asked.Left, range.Bottom?.Least ?? asked.Bottom);
            var (width, height) = (range.Width?.Least ?? asked.Width, range.Height?.Least ?? asked.Height);
            Sideways(path + ".studs", range.Studs, asked.Left, bounds.Left, bounds.Right);
            var (first, last) = (Length.Max(range.Studs?.Least ?? bounds.Left, bounds.Left), Length.Min(range.Studs?.Most ?? bounds.Right, bounds.Right));
            var bay = range.Studs is null ? OnFace : "between its studs";
            Keep(path + ".left", "places", range.Left, asked.Left, first, last - width, Length.Zero, bay);
            Height(path + ".bottom", range.Bottom, asked.Bottom, bounds.Bottom, bounds.Top - height, range.Under);
            Size(path + ".width", range.Width, asked.Width, last - Length.Max(left, first), bay);
            Size(path + ".height", range.Height, asked.Height, bounds.Top - Length.Max(bottom, bounds.Bottom), OnFace);
        }

        public void Check(FixtureRange range, Fixture asked, string path)
        {
            // The right end goes with the left: the higher of them stays under the top, the lower over the foot.
            var (lower, higher) = (Length.Max(asked.HeightLeft - asked.HeightRight, Length.Zero), Length.Max(asked.HeightRight - asked.HeightLeft, Length.Zero));
            Height(range.From is null && range.To is null ? path : path + ".height", range.Height, asked.HeightLeft, bounds.Bottom + lower, bounds.Top - higher, range.Under);
            Sideways(path + ".from", range.From, asked.From, bounds.Left, bounds.Right);
            Sideways(path + ".to", range.To, asked.To ?? bounds.Right, bounds.Left, bounds.Right);
        }

        public void Height(string path, Span? range, Length asked, Length least, Length most, Length under) => Keep(path, "heights", range, asked, least, most, under, OnFace);

        private void Sideways(string path, Span? range, Length asked, Length least, Length most) => Keep(path, "places", range, asked, least, most, Length.Zero, OnFace);

        private void Size(string path, Span? range, Length asked, Length most, string where) => Keep(path, "sizes", range, asked, remarks.Tape.Mark, most, Length.Zero, where);

        private void Keep(string path, string what, Span? range, Length asked, Length least, Length most, Length under, string where)
        {
            // A size under a mark is none on this tape, unless it was asked for.
            if (range is null || (range.Least >= Length.Min(least, asked) && range.Most <= Length.Max(most, asked))) return;
            var tape = remarks.Tape;
            var (low, high) = (tape.Down(least - under) == least - under ? least - under : tape.Down(least - under) + tape.Mark, tape.Down(most - under));
            var (from, to) = (Length.Min(Length.Max(range.Least - under, low), asked - under), Length.Max(Length.Min(range.Most - under, high), asked - under));
            remarks.Faults.Add(new(
                path, $"a range from {Say(range.Least - under)} to {Say(range.Most - under)}", $"{what} that keep it {where}, from {Say(low)} to {Say(high)}", $"[{Say(from)}, {Say(to)}]")
            {
                Mends = [Mend.Of(path, from, to, tape)],
            });

            string Say(Length length) => LengthText.Finer(length, tape);
        }
    }
}
