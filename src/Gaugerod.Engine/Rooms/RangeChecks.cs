using System.Globalization;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// What may be moved stays on its face. Either end of a range must be a measure that the thing can have there: with its other
/// measures as small, or as far left and down, as they may be, it reaches no further than the face does as measured.
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
        FaceShape.Read read => ReadingsToOutline.Draw(read.Readings, [], new(face.Name, path, tape)).Outline?.Bounds,
        _ => null,
    };

    private sealed class Within(string face, Box bounds, Remarks remarks)
    {
        public void Check(OpeningRange range, Box asked, string path)
        {
            var (left, bottom) = (range.Sideways?.Least ?? asked.Left, range.Bottom?.Least ?? asked.Bottom);
            var (width, height) = (range.Width?.Least ?? asked.Width, range.Height?.Least ?? asked.Height);
            Sideways(path + ".studs", range.Studs, asked.Left, bounds.Left, bounds.Right);
            Sideways(path + ".left", range.Left, asked.Left, bounds.Left, bounds.Right - width);
            Height(path + ".bottom", range.Bottom, asked.Bottom, bounds.Bottom, bounds.Top - height, range.Under);
            Size(path + ".width", range.Width, asked.Width, bounds.Right - Length.Max(left, bounds.Left));
            Size(path + ".height", range.Height, asked.Height, bounds.Top - Length.Max(bottom, bounds.Bottom));
        }

        public void Check(FixtureRange range, Fixture asked, string path)
        {
            // The right end goes with the left: the higher of them stays under the top, the lower over the foot.
            var (lower, higher) = (Length.Max(asked.HeightLeft - asked.HeightRight, Length.Zero), Length.Max(asked.HeightRight - asked.HeightLeft, Length.Zero));
            Height(range.From is null && range.To is null ? path : path + ".height", range.Height, asked.HeightLeft, bounds.Bottom + lower, bounds.Top - higher, range.Under);
            Sideways(path + ".from", range.From, asked.From, bounds.Left, bounds.Right);
            Sideways(path + ".to", range.To, asked.To ?? bounds.Right, bounds.Left, bounds.Right);
        }

        public void Height(string path, Span? range, Length asked, Length least, Length most, Length under) => Keep(path, "heights", range, asked, least, most, under);

        private void Sideways(string path, Span? range, Length asked, Length least, Length most) => Keep(path, "places", range, asked, least, most, Length.Zero);

        private void Size(string path, Span? range, Length asked, Length most) => Keep(path, "sizes", range, asked, remarks.Tape.Mark, most, Length.Zero);

        private void Keep(string path, string what, Span? range, Length asked, Length least, Length most, Length under)
        {
            // A size under a mark is none on this tape, unless it was asked for.
            if (range is null || (range.Least >= Length.Min(least, asked) && range.Most <= Length.Max(most, asked))) return;
            var tape = remarks.Tape;
            var (low, high) = (tape.Down(least - under) == least - under ? least - under : tape.Down(least - under) + tape.Mark, tape.Down(most - under));
            var (from, to) = (Length.Min(Length.Max(range.Least - under, low), asked - under), Length.Max(Length.Min(range.Most - under, high), asked - under));
            remarks.Refuse(
                path, $"a range from {Say(range.Least - under)} to {Say(range.Most - under)}", $"{what} that keep it on {face}, from {Say(low)} to {Say(high)}", $"[{Say(from)}, {Say(to)}]");

            string Say(Length length) => LengthText.Finer(length, tape);
        }
    }
}
