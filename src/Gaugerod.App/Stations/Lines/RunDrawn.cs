using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Engine.Layouts;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Lines;

/// <summary>A run unrolled, drawn for one plan, and what is moved on it to show another place of its rods.</summary>
internal sealed class RunDrawn
{
    /// <summary>The kinds of cut tiles, in the order of a frame.</summary>
    public static readonly PieceKind[] CutKinds =
        [PieceKind.Straight, PieceKind.Corner, PieceKind.Notch, PieceKind.Slot, PieceKind.Hole, PieceKind.Taper, PieceKind.Shaped];

    private readonly RodSlide _slide;
    private readonly Sequence<Placing> _place;
    private readonly Func<Ink>[] _inks;
    private readonly (Length Left, Length Top)[] _corners;
    private readonly CutCells _cells = new();
    private readonly CellInk _cellInk;
    private readonly Placing?[] _shown;
    private readonly FaceDrawn[] _faces;

    private RunDrawn(RunPlan run, RodSlide slide)
    {
        (_slide, _place) = (slide, run.Best.Faces);
        var faces = slide.Faces;
        var left = faces.Aggregate(Length.FromSteps(long.MaxValue / 4), (least, face) => Length.Min(least, face.Unrolled + face.Outline.Bounds.Left));
        var right = faces.Aggregate(Length.FromSteps(long.MinValue / 4), (most, face) => Length.Max(most, face.Unrolled + face.Outline.Bounds.Right));
        var bottom = faces.Aggregate(Length.FromSteps(long.MaxValue / 4), (least, face) => Length.Min(least, face.Raised + FaceDrawn.Foot(face)));
        var top = faces.Aggregate(Length.FromSteps(long.MinValue / 4), (most, face) => Length.Max(most, face.Raised + face.Outline.Bounds.Top));
        _shown = new Placing?[faces.Count];
        (Across, Up) = (right - left, top - bottom);
        _corners = [.. faces.Select(face => (left - face.Unrolled, top - face.Raised))];
        _inks = [.. _corners.Select(corner => (Func<Ink>)(() => new Ink(corner.Left, corner.Top)))];
        _cellInk = new(slide.Tiles);
        _faces = new FaceDrawn[faces.Count];
        Folds = string.Concat(faces.Skip(1).Where(face => face.Unrolled != faces[0].Unrolled).Select(face => $"M{Ink.Units(face.Unrolled - left).ToString(CultureInfo.InvariantCulture)} 0v{Ink.Units(Up).ToString(CultureInfo.InvariantCulture)}"));
        LevelMarks = Marks(Axis.Level, at => Ink.Units(at - left), Across, level: true);
        PlumbMarks = Marks(Axis.Plumb, at => Ink.Units(top - at), Up, level: false);
    }

    /// <summary>Draws a run, a face at a time so that the page stays quick.</summary>
    public static async Task<RunDrawn> MakeAsync(Plan plan, int index, RunPlan run, RodSlide slide)
    {
        var drawn = new RunDrawn(run, slide) { Trims = TrimsOf(plan, slide) };
        var others = plan.Runs.Where((_, i) => i != index).SelectMany(other => other.Faces).ToList();
        for (var f = 0; f < drawn._faces.Length; f++)
        {
            drawn._faces[f] = FaceDrawn.Of(run, others, drawn.Trims[f], slide, f, drawn._inks[f]);
            await Task.Delay(1);
        }

        return drawn;
    }

    /// <summary>How wide the run is, unrolled.</summary>
    public Length Across { get; }

    /// <summary>How high it is.</summary>
    public Length Up { get; }

    public long Width => Ink.Units(Across);

    public long Height => Ink.Units(Up);

    public IReadOnlyList<FaceDrawn> Faces => _faces;

    /// <summary>The trims of each face's wall; none with a further part of a wall, so that each is drawn and picked once.</summary>
    public required IReadOnlyList<IReadOnlyList<TrimPart>> Trims { get; init; }

    /// <summary>The corners between faces.</summary>
    public string Folds { get; }

    /// <summary>The marks of the rod along the bottom.</summary>
    public string LevelMarks { get; }

    /// <summary>The marks of the rod along the left.</summary>
    public string PlumbMarks { get; }

    /// <summary>How a rod's drawn marks are moved.</summary>
    public string MarksMoved(Axis rod, Length at, Length drawnAt)
    {
        var off = Ink.Units(Length.FromSteps(Grid.Mod((at - drawnAt).Steps, _slide.Pitch(rod).Steps)));
        return rod == Axis.Level ? Moved(off, 0) : Moved(0, -off);
    }

    /// <summary>How a face's drawn lattice is moved to show a place.</summary>
    public string LatticeMoved(Sequence<Placing> place, int face)
    {
        var (right, up) = _slide.Shift(_place, place, face);
        return Moved(Ink.Units(right), -Ink.Units(up));
    }

    /// <summary>The face a place of the picture is on, and that place on it; the nearest face where it is on none.</summary>
    public (int Face, Point At) OnFace(double x, double y)
    {
        var (best, off) = (0, Length.FromSteps(long.MaxValue));
        for (var f = 0; f < _corners.Length; f++)
        {
            var (box, at) = (_slide.Faces[f].Outline.Bounds, _inks[f]().FaceX(x));
            var beside = Length.Max(Length.Max(box.Left - at, at - box.Right), Length.Zero);
            if (beside < off || (beside == off && Holds(f, x, y))) (best, off) = (f, beside);
        }

        var ink = _inks[best]();
        return (best, new(ink.FaceX(x), ink.FaceY(y)));
    }

    /// <summary>Whether a place of the picture is on a face's own tile: zones and strips share their wall.</summary>
    private bool Holds(int face, double x, double y)
    {
        var ink = _inks[face]();
        return RingChecks.Locate(_slide.Faces[face].Field.Outer, new(ink.FaceX(x), ink.FaceY(y))) != Whereabouts.Outside;
    }

    /// <summary>An outline on a face, as a path of the picture.</summary>
    public string Outline(int face, IEnumerable<Ring> rings) => _inks[face]().Rings(rings).ToString();

    /// <summary>Adds a face's cut tiles, a path for each kind; nulls where they are those that were asked for last.</summary>
    public void Cut(Sequence<Placing> place, int face, List<string?> frame)
    {
        var same = _shown[face] == place[face];
        _shown[face] = place[face];
        if (!same) _slide.Cut(place, face, _cells);
        foreach (var kind in CutKinds) frame.Add(same ? null : _cellInk.Path(_cells.Of(kind), _corners[face].Left, _corners[face].Top));
    }

    private static IReadOnlyList<TrimPart>[] TrimsOf(Plan plan, RodSlide slide)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. slide.Faces.Select(face => seen.Add(face.Wall) ? WallTrims.Of(plan, face.Wall) : [])];
    }

    private static string Moved(long right, long down) => string.Create(CultureInfo.InvariantCulture, $"translate({right} {down})");

    private string Marks(Axis rod, Func<Length, long> at, Length span, bool level)
    {
        var (pitch, first) = (_slide.Pitch(rod), level ? _place[0].X + _slide.Faces[0].Unrolled : _place[0].Y + _slide.Faces[0].Raised);
        var from = -Grid.FloorDiv(first.Steps + span.Steps, pitch.Steps) - 2;
        var path = new System.Text.StringBuilder();
        for (var k = from; k < (((span.Steps * 2) - first.Steps) / pitch.Steps) + 2; k++)
        {
            var place = at(first + (pitch * k));
            path.Append(level ? FormattableString.Invariant($"M{place} 0v100") : FormattableString.Invariant($"M0 {place}h100"));
        }

        return path.ToString();
    }
}
