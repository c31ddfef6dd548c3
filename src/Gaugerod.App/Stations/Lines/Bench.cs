using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Lines;

/// <summary>One run on the bench: the plan it was drawn for, and where its rods stand now.</summary>
internal sealed class Bench
{
    private Sequence<Placing> _grabbed;

    private Bench(Plan plan, int index, int face, RodSlide slide, RunDrawn drawn, RunPlan run)
    {
        (Job, Index, Face) = (plan.Job, index, face);
        (Run, Slide, Drawn) = (run, slide, drawn);
        Level = new(Slide, Axis.Level, Tape);
        Plumb = new(Slide, Axis.Plumb, Tape);
        Place = _grabbed = Run.Best.Faces;
        Now = Before = Slide.At(Place);
    }

    /// <summary>Lays a run on the bench, a little at a time so that the page stays quick.</summary>
    public static async Task<Bench> MakeAsync(Plan plan, int run, int face)
    {
        await Task.Delay(1);
        var slide = RodSlide.Of(plan.Job, plan.Runs[run]);
        await Task.Delay(1);
        var drawn = await RunDrawn.MakeAsync(plan, run, plan.Runs[run], slide);
        return new(plan, run, face, slide, drawn, plan.Runs[run]);
    }

    /// <summary>Lays the run on the bench with its bond turned another way about where it stands.</summary>
    public async Task<Bench> TurnedAsync(Plan plan, Angle turn)
    {
        var (slide, run) = RodSlide.Turned(Job, Run, Place, turn);
        await Task.Delay(1);
        var drawn = await RunDrawn.MakeAsync(plan, Index, run, slide);
        return new(plan, Index, Face, slide, drawn, run) { IsTurning = true };
    }

    /// <summary>The tiles of each face with the bond turned as in a place, drawn, a face at a time so that the page stays quick.</summary>
    public async Task<IReadOnlyList<string>> LatticesAsync(Sequence<Placing> place)
    {
        var (slide, run) = RodSlide.Turned(Job, Run, place, place[0].Turn);
        var drawn = new List<string>();
        for (var face = 0; face < slide.Faces.Count; face++)
        {
            await Task.Delay(1);
            drawn.Add(Drawn.Outline(face, slide.Lattice(run.Best.Faces, face)));
        }

        return drawn;
    }

    public Job Job { get; }

    public int Index { get; }

    public RunPlan Run { get; }

    public RodSlide Slide { get; }

    public RunDrawn Drawn { get; }

    public RodCurve Level { get; }

    public RodCurve Plumb { get; }

    /// <summary>The face last touched.</summary>
    public int Face { get; set; }

    public Tape Tape => Job.Tape;

    /// <summary>Where the rods stand.</summary>
    public Sequence<Placing> Place { get; private set; }

    /// <summary>What the run comes to there.</summary>
    public SlideFigures Now { get; private set; }

    /// <summary>What it came to when the rods last rested elsewhere.</summary>
    public SlideFigures Before { get; set; }

    /// <summary>Whether the rods stand where the plan has them.</summary>
    public bool IsPlanned => !IsTurning && Place.Equals(Run.Best.Faces);

    /// <summary>Whether it shows the bond turned another way than in the plan, while a person turns it.</summary>
    public bool IsTurning { get; private init; }

    /// <summary>Whether a person chose the plan's place.</summary>
    public bool IsHeld => Run.Request.Place is not null;

    public RodCurve Curve(Axis rod) => rod == Axis.Level ? Level : Plumb;

    /// <summary>Takes hold of the rods where they stand.</summary>
    public void Grab() => (_grabbed, Before) = (Place, Now);

    /// <summary>Moves a rod from where it was taken hold of, clicking onto what is near.</summary>
    public void SlideBy(Axis rod, Length by, Length reach)
    {
        var curve = Curve(rod);
        var click = curve.ToStop(curve.Within(curve.Stand(_grabbed, Face) + by), reach);
        Stand(Slide.Moved(_grabbed, rod, by + click, Face));
    }

    public void Stand(Sequence<Placing> place)
    {
        Place = place;
        Now = Slide.At(place);
    }

    /// <summary>What the page moves to show where the rods stand: for each rod its marks, its place on the curve and its words, then for each face its lattice and its cut tiles by kind.</summary>
    public string?[] Frame()
    {
        var frame = new List<string?>();
        foreach (var rod in new[] { Axis.Level, Axis.Plumb })
        {
            var (curve, stand) = (Curve(rod), Curve(rod).Stand(Place, Face));
            frame.Add(Drawn.MarksMoved(rod, stand, curve.Stand(Run.Best.Faces, Face)));
            var spot = curve.Spot(curve.Within(stand));
            frame.Add(rod == Axis.Level ? FormattableString.Invariant($"translate({spot} 0)") : FormattableString.Invariant($"translate(0 {RodCurve.Long - spot})"));
            frame.Add(Words(rod));
        }

        for (var f = 0; f < Drawn.Faces.Count; f++)
        {
            frame.Add(Drawn.LatticeMoved(Place, f));
            Drawn.Cut(Place, f, frame);
        }

        return [.. frame];
    }

    /// <summary>Where a rod stands, as it is said.</summary>
    public string Words(Axis rod)
    {
        var curve = Curve(rod);
        var at = LengthText.Nearest(Length.FromSteps(Gaugerod.Plane.Shapes.Grid.Mod(curve.Stand(Place, Face).Steps, Slide.Pitch(rod).Steps)), Tape);
        var cut = Now.Score.Cuts == 0 ? "no tile is cut" : $"smallest cut {LengthText.Narrowest(Now.Score.SmallestCut, Tape)}";
        var from = Slide.Faces[Slide.Restart ? Face : 0].Name;
        if (Run.IsPattern) return rod == Axis.Level ? $"the pattern stands {at} from the left of {from}; {cut}" : $"the pattern stands {at} up on {from}; {cut}";
        return rod == Axis.Level ? $"a tile's side {at} from the left of {from}; {cut}" : $"a course begins {at} up on {Slide.Faces[0].Name}; {cut}";
    }

    /// <summary>The place as the job keeps it.</summary>
    public JsonObject Kept(Sequence<Placing> place)
    {
        var held = Slide.Held(place);
        var kept = new JsonObject
        {
            ["x"] = held.X.Count == 1 ? Typed(held.X[0]) : new JsonArray([.. held.X.Select(Typed)]),
            ["y"] = Typed(held.Y),
        };
        if (held.Joint is { } joint) kept["joint"] = Typed(joint);
        return kept;
    }

    /// <summary>A length as the tape shows it where that is exact, else in millimetres to the step.</summary>
    private JsonNode Typed(Length length) => Tape.Nearest(length) == length
        ? JsonValue.Create(LengthText.Nearest(length, Tape))
        : JsonValue.Create(string.Create(CultureInfo.InvariantCulture, $"{LengthText.ExactMillimetres(length)} mm"));
}
