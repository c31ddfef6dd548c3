using Gaugerod.App.Desk;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The curve beside a rod: the smallest cut if the rod stood elsewhere, over one repeat, worked out a slice at a time.</summary>
internal sealed class RodCurve(RodSlide slide, Axis rod, Tape tape)
{
    /// <summary>The curve's length in its own picture.</summary>
    public const int Long = 1000;

    /// <summary>Its depth there.</summary>
    public const int Deep = 100;

    private const int MostPlaces = 240;
    private const int Slice = 4;
    private const int MostPeaks = 6;

    private int _round;

    public Axis Rod => rod;

    /// <summary>The area under the curve; empty until it is worked out.</summary>
    public string Area { get; private set; } = "";

    /// <summary>A tick at each peak.</summary>
    public string Ticks { get; private set; } = "";

    /// <summary>The peaks, where the rod then stands within its repeat, in order.</summary>
    public IReadOnlyList<Length> Peaks { get; private set; } = [];

    /// <summary>Where the rod may click onto: peaks, and lines that wants ask for.</summary>
    public IReadOnlyList<Length> Stops { get; private set; } = [];

    public Length Repeat => slide.Repeat(rod);

    /// <summary>Where a rod stands within its repeat.</summary>
    public Length At(Sequence<Placing> place, int face) => Within(Stand(place, face));

    /// <summary>Where a rod stands on the run: level from its left, plumb above the first face's y = 0.</summary>
    public Length Stand(Sequence<Placing> place, int face)
    {
        var one = slide.Restart ? face : 0;
        return rod == Axis.Level ? place[one].X + slide.Faces[one].Unrolled : place[0].Y + slide.Faces[0].Raised;
    }

    public Length Within(Length place) => Length.FromSteps(Grid.Mod(place.Steps, Repeat.Steps));

    /// <summary>The nearest stop within a reach, as the way there; zero for none.</summary>
    public Length ToStop(Length at, Length reach)
    {
        var best = Length.Zero;
        foreach (var stop in Stops)
        {
            var way = Nearest(stop - at);
            if (way.Abs() <= reach && (best == Length.Zero || way.Abs() < best.Abs())) best = way;
        }

        return best;
    }

    /// <summary>The way to the next peak up or down; zero where there is none.</summary>
    public Length ToPeak(Length at, bool on)
    {
        var ways = Peaks.Select(peak => Within(on ? peak - at : at - peak)).Where(way => way.Steps > 64 && way.Steps < Repeat.Steps - 64).ToList();
        if (ways.Count == 0) return Length.Zero;
        var way = ways.Aggregate(Length.Min);
        return on ? way : -way;
    }

    /// <summary>Shows another curve of the same rod until this one is worked out.</summary>
    public void Begin(RodCurve before)
    {
        if (before.Repeat != Repeat) return;
        (Area, Ticks, Peaks, Stops) = (before.Area, before.Ticks, before.Peaks, before.Stops);
    }

    /// <summary>Works the curve out anew, a slice at a time; a later call takes over.</summary>
    /// <param name="place">Where the rods stand.</param>
    /// <param name="planned">Where the plan has them; the rod clicks onto that too.</param>
    /// <param name="face">The face touched last.</param>
    /// <returns>Whether it is done, and not overtaken.</returns>
    public async Task<bool> WorkOutAsync(Sequence<Placing> place, Sequence<Placing> planned, int face)
    {
        var round = ++_round;
        var count = (int)Math.Clamp(Repeat.Steps / tape.Mark.Steps, 24, MostPlaces);
        var (step, at) = (Length.FromSteps(Repeat.Steps / count), At(place, face));
        var smallest = new Length[count];
        var breath = new Breath();
        for (var from = 0; from < count; from += Slice)
        {
            slide.Curve(place, rod, face, (step * from) - at, step, smallest.AsSpan(from, Math.Min(Slice, count - from)));
            if (!breath.IsDue) continue;
            await breath.TakeAsync();
            if (round != _round) return false;
        }

        var peaks = new List<(Length By, Length Smallest)>();
        foreach (var i in Tops(smallest))
        {
            peaks.Add(slide.Peak(place, rod, face, (step * i) - at, step));
            if (!breath.IsDue) continue;
            await breath.TakeAsync();
            if (round != _round) return false;
        }

        Peaks = [.. peaks.OrderByDescending(peak => peak.Smallest).Take(MostPeaks).Select(peak => Within(peak.By + at)).Order().DistinctBy(peak => peak.Steps / (tape.Mark.Steps / 4))];
        var pitch = slide.Pitch(rod);
        var wanted = slide.ToWants(place, rod, face)
            .SelectMany(way => Enumerable.Range(0, (int)(Repeat.Steps / pitch.Steps)).Select(k => Within(at + way + (pitch * k))));
        Stops = [.. Peaks, .. wanted, At(planned, face)];
        Draw(smallest);
        return true;
    }

    /// <summary>A place within the repeat in the curve's picture.</summary>
    public long Spot(Length at) => at.Steps * Long / Repeat.Steps;

    private Length Nearest(Length way)
    {
        var rest = Within(way);
        return rest * 2 > Repeat ? rest - Repeat : rest;
    }

    private static IEnumerable<int> Tops(Length[] smallest)
    {
        var count = smallest.Length;
        for (var i = 0; i < count; i++)
        {
            if (smallest[i] > smallest[(i + count - 1) % count] && smallest[i] >= smallest[(i + 1) % count]) yield return i;
        }
    }

    private void Draw(Length[] smallest)
    {
        var most = Math.Max(1, smallest.Max(cut => cut.Steps));
        var path = new System.Text.StringBuilder();
        path.Append(rod == Axis.Level ? Say($"M0 {Deep}") : Say($"M0 {Long}"));
        for (var i = 0; i <= smallest.Length; i++)
        {
            var (along, deep) = ((long)i * Long / smallest.Length, smallest[i % smallest.Length].Steps * (Deep - 8) / most);
            path.Append(rod == Axis.Level ? Say($"L{along} {Deep - deep}") : Say($"L{deep} {Long - along}"));
        }

        path.Append(rod == Axis.Level ? Say($"L{Long} {Deep}z") : "L0 0z");
        Area = path.ToString();
        Ticks = string.Concat(Peaks.Select(peak => rod == Axis.Level ? Say($"M{Spot(peak)} 0v{Deep}") : Say($"M0 {Long - Spot(peak)}h{Deep}")));
    }

    private static string Say(FormattableString text) => FormattableString.Invariant(text);
}
