using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Draws a face: as finished while the plan is that of the job, else roughly from what can be read of it.</summary>
internal static class SketchMaker
{
    /// <summary>The drawing; null while there is too little to draw.</summary>
    public static Sketch? Of(JobDesk desk, int index)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"faces[{index}]");
        if (JobPath.Get(desk.Root, path) is not JsonObject face) return null;
        var rough = new Rough(desk, path, face);
        IReadOnlyList<FinishedFace> finished = desk.Fresh && desk.Faults.Count == 0 && desk.Plan is { } plan
            ? [.. plan.Runs.SelectMany(run => run.Faces).Select(f => f.Face).Where(part => Whole(part, face, rough.Zones))]
            : [];
        return finished.Count == 0 ? rough.Draw() : Finished(finished, rough);
    }

    // A face with zones is finished in parts, a border in strips, a folded one in planes.
    private static bool Whole(FinishedFace part, JsonObject face, IReadOnlyList<string> zones)
    {
        var name = part.Plane?.Face ?? part.Name;
        return string.Equals(name, JobLists.Name(face), StringComparison.Ordinal)
            || zones.Any(zone => string.Equals(name, zone, StringComparison.Ordinal) || name.StartsWith(zone + " ", StringComparison.Ordinal));
    }

    private static Sketch Finished(IReadOnlyList<FinishedFace> parts, Rough rough)
    {
        var face = parts[0];
        // Planes have outlines of their own; the whole is then drawn as it was measured. So is what its readings are drawn in.
        var outline = face.Plane is null && rough.Survey is null ? Sketch.Of(face.Outline) : rough.Outline();
        IReadOnlyList<IReadOnlyList<Spot>> field = [.. parts.SelectMany(part => part.Field.Inner.Prepend(part.Field.Outer)).Select(Sketch.Of)];
        return new(outline, field, [.. face.Openings.Select(o => Sketch.Of(o.Ring))], rough.Fixtures(),
            [.. face.Holes.Select(h => (Sketch.Of(h.Centre), (double)h.Diameter.Millimetres))],
            face.LevelLine is { } line ? (double)line.Millimetres : null, [.. rough.Names(outline), .. parts.SelectMany(rough.ZoneName)], Exact: true) { Survey = rough.Survey, Drains = rough.Drains() };
    }

    /// <summary>What can be read of a face, without the engine's help, so that one sees it grow while it is still incomplete.</summary>
    private sealed class Rough(JobDesk desk, string path, JsonObject face)
    {
        private static readonly string[] s_sides = ["foot", "right", "head", "left"];

        public IReadOnlyList<string> Zones { get; } = [.. JobLists.List(desk.Root, path + ".zones").Select(JobLists.Name).Where(name => name.Length > 0)];

        public SurveyLook? Survey { get; } = face["survey"] is null ? null : desk.Survey(path);

        public IReadOnlyList<Spot> Outline() => face["outline"] is JsonArray corners ? Corners(corners, 0) : face["survey"] is not null ? Surveyed() : Wall();

        public Sketch? Draw()
        {
            var outline = Outline();
            if (outline.Count < 3) return null;
            var openings = Things("openings").Select(o => Opening(o.Thing)).Where(ring => ring.Count > 2).ToList();
            var holes = Things("holes").Select(h => (Hole: Stands(h.Thing), Wide: At(h.Thing, "diameter") ?? 20)).Where(h => h.Hole is not null).Select(h => (h.Hole!.Value, h.Wide)).ToList();
            return new(outline, ZoneRings(outline), openings, Fixtures(), holes, Line(), [.. Names(outline), .. ZoneNames(outline)], Exact: false) { Survey = Survey, Drains = Drains() };
        }

        public IReadOnlyList<IReadOnlyList<Spot>> Fixtures() => [.. Things("fixtures").Select(f => Fixture(f.Thing)).Where(ring => ring.Count > 2)];

        /// <summary>Where it falls to: holes, and channels from one place to another.</summary>
        public IReadOnlyList<SketchDrain> Drains()
        {
            var (holes, drains) = (Things("holes").Select(one => one.Thing).ToList(), new List<SketchDrain>());
            foreach (var drain in JobLists.List(desk.Root, path + ".falls.drains").Append(JobPath.Get(desk.Root, path + ".falls.to")))
            {
                if (drain is JsonArray { Count: 2 } channel)
                {
                    if (FaceMeasures.Place(desk, channel[0]) is { } from && FaceMeasures.Place(desk, channel[1]) is { } to) drains.Add(new(Sketch.Of(from), Sketch.Of(to), "channel"));
                }
                else if (drain is JsonValue && holes.Find(one => string.Equals(JobLists.Name(one), drain.ToString(), StringComparison.Ordinal)) is { } hole && Stands(hole) is { } at)
                {
                    // At a spot that was read its name stands there already.
                    drains.Add(new(at, at, hole["spot"] is null ? JobLists.Name(hole) : ""));
                }
            }

            return drains;
        }

        // At a spot that was measured to, or where its own figures say.
        private Spot? Stands(JsonObject hole) => hole["spot"]?.ToString() is { } name
            ? Survey?.Places.Where(place => string.Equals(place.Name, name, StringComparison.Ordinal)).Select(place => (Spot?)Sketch.Of(place.Place)).FirstOrDefault()
            : At(hole, "x") is { } x && Up(hole, "y") is { } y ? new Spot(x, y) : null;

        public IReadOnlyList<SketchName> Names(IReadOnlyList<Spot> outline)
        {
            var names = new List<SketchName>();
            if (face["outline"] is JsonArray corners)
            {
                for (var i = 0; i < corners.Count; i++)
                {
                    // An arc is named at the point it goes through.
                    var next = corners[(i + 1) % corners.Count];
                    if (FaceMeasures.Place(desk, FaceMeasures.Corner(corners[i])) is not { } from || FaceMeasures.Place(desk, FaceMeasures.Corner(next)) is not { } to) continue;
                    var middle = FaceMeasures.Place(desk, (next as JsonObject)?["through"]) is { } through ? Sketch.Of(through) : Middle([Sketch.Of(from), Sketch.Of(to)]);
                    var at = string.Create(CultureInfo.InvariantCulture, $"{path}.edges[{i}]");
                    var name = FieldId.Text(desk, at + ".name");
                    names.Add(new(name.Length > 0 ? name : string.Create(CultureInfo.InvariantCulture, $"side {i + 1}"), "", middle, FieldId.Of(at + ".kind"), ""));
                }
            }
            else if (face["readings"] is not null)
            {
                // The finished outline ends at the fixtures; the wall's own foot and head lie behind them.
                IReadOnlyList<Spot> whole = [.. outline, .. Fixtures().SelectMany(ring => ring)];
                var (low, high) = (new Spot(whole.Min(p => p.X), whole.Min(p => p.Y)), new Spot(whole.Max(p => p.X), whole.Max(p => p.Y)));
                var middle = Middle([low, high]);
                Spot[] places = [new(middle.X, low.Y), new(high.X, middle.Y), new(middle.X, high.Y), new(low.X, middle.Y)];
                string[] readings = ["width.foot", "height.right", "width.top", "height.left"];
                names.AddRange(s_sides.Select((side, i) => new SketchName(side, FieldId.Text(desk, $"{path}.readings.{readings[i]}"), places[i], FieldId.Of($"{path}.edges.{side}.kind"), side)));
                names.AddRange(Things("fixtures").Select(f => (f, Ring: Fixture(f.Thing))).Where(f => f.Ring.Count > 2).Select(f => Named(f.f, f.Ring)));
            }

            names.AddRange(Things("openings").Select(o => (o, Ring: Opening(o.Thing))).Where(o => o.Ring.Count > 2).Select(o => Named(o.o, o.Ring)));
            return names;
        }

        /// <summary>Zones as they were asked for, so that one sees what is at fault with them.</summary>
        private IReadOnlyList<IReadOnlyList<Spot>> ZoneRings(IReadOnlyList<Spot> outline) => [.. Things("zones").Select(zone => RoughZone.Of(zone.Thing, outline, key => At(zone.Thing, key), key => Up(zone.Thing, key))).Where(ring => ring.Count > 2)];

        private IEnumerable<SketchName> ZoneNames(IReadOnlyList<Spot> outline) => Things("zones")
            .Select(zone => (zone, Ring: RoughZone.Of(zone.Thing, outline, key => At(zone.Thing, key), key => Up(zone.Thing, key))))
            .Where(of => of.Ring.Count > 2 && of.zone.Thing["kind"]?.ToString() is not "border").Select(of => Named(of.zone, of.Ring));

        /// <summary>The name of a zone, in the middle of its field; none for the strips of a border.</summary>
        public IEnumerable<SketchName> ZoneName(FinishedFace part)
        {
            if (Zones.ToList().IndexOf(part.Name) is >= 0 and var at)
                yield return new(part.Name, "", Middle(Sketch.Of(part.Field.Outer)), FieldId.Of(string.Create(CultureInfo.InvariantCulture, $"{path}.zones[{at}]")), "in");
        }

        private static SketchName Named((JsonObject Thing, string Path) thing, IReadOnlyList<Spot> ring) =>
            new(JobLists.Name(thing.Thing), "", Middle(ring), FieldId.Of(thing.Path + ".name"), "in");

        private IReadOnlyList<Spot> Surveyed() => Survey switch
        {
            { Shape.Outline: { } ring } => Sketch.Of(ring),
            { } look => [.. look.Places.Take(look.Survey.Corners.Count).Select(corner => Sketch.Of(corner.Place))],
            _ => [],
        };

        // Foot level but for the level line; the top's width is shared by the corners whose lean was not read.
        private List<Spot> Wall()
        {
            if (Read("width.foot") is not > 0 || Read("height.left") is not > 0) return [];
            var (wide, left) = (Read("width.foot")!.Value, Read("height.left")!.Value);
            var rise = Read("levelLine.left") is { } a && Read("levelLine.right") is { } b ? a - b : 0;
            var right = Read("height.right") ?? left - rise;
            var spare = Read("width.top") is { } top ? wide - top : 0;
            var leanLeft = Read("lean.left") ?? (Read("lean.right") is { } other ? spare - other : 0);
            var leanRight = Read("lean.right") ?? spare - leanLeft;
            return [new(0, 0), new(wide, rise), new(wide - leanRight, rise + right), new(leanLeft, left)];
        }

        private List<Spot> Fixture(JsonObject fixture)
        {
            var outline = Wall();
            if (outline.Count == 0) return [];
            var (from, to) = (At(fixture, "from") ?? outline[0].X, At(fixture, "to") ?? outline[1].X);
            var left = Up(fixture, "heightLeft") ?? Up(fixture, "height");
            if (left is null || to <= from) return [];
            var right = Up(fixture, "heightRight") ?? Up(fixture, "height") ?? left.Value;
            var end = fixture["at"]?.ToString() is "head" ? outline.Max(p => p.Y) : outline.Min(p => p.Y);
            return [new(from, end), new(to, end), new(to, right), new(from, left.Value)];
        }

        private List<Spot> Opening(JsonObject opening)
        {
            if (opening["outline"] is JsonArray corners) return Corners(corners, Base(opening));
            if (At(opening, "left") is not { } x || Up(opening, "bottom") is not { } y || At(opening, "width") is not > 0 || At(opening, "height") is not > 0) return [];
            var (wide, high) = (At(opening, "width")!.Value, At(opening, "height")!.Value);
            return [new(x, y), new(x + wide, y), new(x + wide, y + high), new(x, y + high)];
        }

        private List<Spot> Corners(JsonArray corners, double up)
        {
            var spots = new List<Spot>();
            for (var i = 0; i < corners.Count; i++)
            {
                if (FaceMeasures.Place(desk, FaceMeasures.Corner(corners[i])) is not { } to) return [];
                if (corners[i] is JsonObject arc && FaceMeasures.Place(desk, FaceMeasures.Corner(corners[(i + corners.Count - 1) % corners.Count])) is { } from
                    && FaceMeasures.Place(desk, arc["through"]) is { } through && Arc.Of(from, through, to) is { } round)
                {
                    spots.AddRange(round.Corners().Select(Sketch.Of));
                }

                spots.Add(Sketch.Of(to));
            }

            return [.. spots.Select(spot => spot with { Y = spot.Y + up })];
        }

        private IEnumerable<(JsonObject Thing, string Path)> Things(string list) =>
            JobLists.List(desk.Root, $"{path}.{list}").Select((thing, i) => (thing as JsonObject ?? [], string.Create(CultureInfo.InvariantCulture, $"{path}.{list}[{i}]")));

        private double? Line() => face["survey"] is not null ? (double?)Survey?.Shape.LevelLine?.Millimetres : face["outline"] is null ? Read("levelLine.left") : Length(face["levelLine"]);

        private double Base(JsonObject thing) => thing["heightsFrom"]?.ToString() is "level line" ? Line() ?? 0 : 0;

        private double? Up(JsonObject thing, string key) => At(thing, key) is { } height ? height + Base(thing) : null;

        private double? At(JsonObject thing, string key) => Length(thing[key]);

        private double? Read(string reading) => Length(JobPath.Get(desk.Root, $"{path}.readings.{reading}"));

        private double? Length(JsonNode? node) =>
            node is JsonValue value && LengthText.Read(value.ToString(), desk.Unit) is LengthReading.Understood read ? (double)read.Value.Millimetres : null;

        private static Spot Middle(IReadOnlyList<Spot> ring) =>
            new((ring.Min(p => p.X) + ring.Max(p => p.X)) / 2, (ring.Min(p => p.Y) + ring.Max(p => p.Y)) / 2);
    }
}
