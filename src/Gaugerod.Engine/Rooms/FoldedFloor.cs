using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>A floor that bends, parted into its planes.</summary>
internal sealed class FoldedFloor
{
    // What a hair beside a fold makes of a corner comes back to the corner.
    private const double Corner = 640;

    private readonly FinishedFace _whole;
    private readonly FoldSaw _saw;
    private readonly IReadOnlyList<Fold> _folds;
    private readonly Length _joint;
    private readonly List<Bent> _planes;
    private readonly string _path;

    private FoldedFloor(FinishedFace whole, IReadOnlyList<Fold> folds, IReadOnlyList<Cone?> cones, IReadOnlyList<FloorSides> sides, Point? drain, Length joint, string path, Tape tape)
    {
        (_whole, _folds, _joint, _path) = (whole, folds, joint, path);
        _saw = new(whole, folds, tape);
        var bare = whole.Openings.Select(opening => opening.Ring.CounterClockwise().Reversed()).Prepend(whole.Outline).ToList();
        var first = bare.Sum(ring => ring.Points.Count);
        var number = 0;
        var parts = _saw.Parts([.. bare.Select(ring => ring.Points.Select(point => new TaggedCorner(point.X.Steps, point.Y.Steps, number++)).ToArray())], FoldSaw.Least, first);
        _planes = [.. parts.Select(part =>
        {
            var at = FoldSaw.InsideOf(part, first);
            var from = drain is { } middle ? sides.TakeWhile(side => !Sees(whole.Outline, side, middle, at)).Count() : sides.Count;
            var along = part.SelectMany(ring => ring).Where(node => node.Tag >= first).Select(node => node.Tag - first).Distinct().ToSequence();
            return new Bent("", from, [.. part.Select(FoldSaw.Plain)], along) { Cone = from < sides.Count ? cones[from] : null };
        }).OrderBy(plane => plane.From).ThenBy(plane => plane.Area[0].Bounds.Left).ThenBy(plane => plane.Area[0].Bounds.Bottom)];
        for (var i = 0; i < _planes.Count; i++)
        {
            var alike = _planes.Where(plane => plane.From == _planes[i].From).ToList();
            var place = alike.Count > 1 ? (_planes.Take(i).Count(plane => plane.From == _planes[i].From) + 1).ToString(CultureInfo.InvariantCulture) : "";
            _planes[i] = _planes[i] with { Name = $"{(_planes[i].From < sides.Count ? sides[_planes[i].From].Name : "")} {place}".Trim() };
        }
    }

    /// <summary>One plane of the floor.</summary>
    /// <param name="Name">Its name beside the floor's.</param>
    /// <param name="From">Which sides it falls from.</param>
    /// <param name="Area">Its outline as measured, then its holes.</param>
    /// <param name="Along">The folds along it.</param>
    private sealed record Bent(string Name, int From, Sequence<Ring> Area, Sequence<int> Along)
    {
        public Cone? Cone { get; init; }

        public bool Holds(Point place) => RingChecks.Locate(Area[0], place) == Whereabouts.Inside && Area.Skip(1).All(hole => RingChecks.Locate(hole, place) == Whereabouts.Outside);
    }

    /// <summary>The floor with its folds; null, with remarks, where it cannot fall so.</summary>
    /// <param name="whole">The face as a whole.</param>
    /// <param name="falls">Where it bends.</param>
    /// <param name="joint">The joint along folds.</param>
    /// <param name="path">Where the face stands in the job.</param>
    /// <param name="remarks">Takes what is wrong and what is to be known.</param>
    public static FoldedFloor? Of(FinishedFace whole, Falls falls, Length joint, string path, Remarks remarks)
    {
        var (bounds, before) = (whole.Outline.Bounds, remarks.Faults.Count);
        if (falls.HasFolds && !FoldSaw.Reaches(bounds))
        {
            remarks.Refuse(path + ".falls", $"folds on {remarks.Say(bounds.Width)} by {remarks.Say(bounds.Height)}", "folds on a face of at most 5 m either way", "the face in parts");
            return null;
        }

        IReadOnlyList<FloorSides> sides = [];
        var (folds, cones, drain) = ((IReadOnlyList<Fold>)[], (IReadOnlyList<Cone?>)[], falls.Drain is { } name ? whole.Holes.First(hole => string.Equals(hole.Name, name, StringComparison.Ordinal)) : null);
        if (drain is not null)
        {
            if (!DrainChecks.SeesAll(whole, drain, path, remarks)) return null;
            sides = FloorSides.Of(whole.Outline, whole.OutlineNames, remarks.Tape.Mark.Steps, out var corners);
            folds = [.. corners.Select(corner => new Fold(drain.Centre, whole.Outline.Points[corner], Fold.Drains))];
            cones = [.. sides.Select(side => Cone.Of(whole.Outline, side, drain))];
        }

        folds = FoldLines.Of(whole, falls.Lines, folds, path, remarks);
        if (remarks.Faults.Count > before) return null;
        if (drain is not null && falls.Lines.Count > 0)
        {
            remarks.Find(FindingLevel.Note, "falls", whole.Name, $"It falls to '{drain.Name}' and has folds of its own beside: tiles are cut along the folds from the drain to every corner and along its own.");
        }

        var floor = new FoldedFloor(whole, folds, cones, sides, drain?.Centre, joint, path, remarks.Tape);
        floor.Check(remarks);
        return remarks.Faults.Count > before ? null : floor;
    }

    /// <summary>The planes of the face, or of a zone of it: they stay where they are on the run, so that one pattern runs over them all. None, with remarks, where one is in several parts.</summary>
    public IReadOnlyList<FinishedFace> Cut(FinishedFace part, Remarks remarks)
    {
        if (_folds.Count == 0) return [part with { Cones = _planes.Select(plane => plane.Cone).OfType<Cone>().ToSequence() }];
        List<FieldEdge> edges = [.. part.Edges, .. _folds.Select(_ => new FieldEdge(default, default, "fold", EdgeKind.Zone))];
        var of = new PlaneOf(part);
        var cut = new List<FinishedFace>();
        foreach (var (plane, pieces) in Fields(part))
        {
            if (pieces.Count > 1)
            {
                remarks.Refuse(_path + ".falls", $"folds that leave the plane \"{plane.Name}\" of \"{part.Name}\" in {pieces.Count.ToString(CultureInfo.InvariantCulture)} parts", "planes in one part each", "folds that run clear of openings, or through them");
                continue;
            }

            if (ZoneField.Of(part, _planes.Count == 1 ? part.Name : $"{part.Name} {plane.Name}", pieces[0], edges) is not { } field) continue;
            cut.Add(field with { Outline = _planes.Count == 1 ? part.Outline : Outline(plane), OutlineNames = [], Plane = of, Cones = plane.Cone is { } cone ? [cone] : [] });
        }

        return cut;
    }

    private IEnumerable<(Bent Plane, IReadOnlyList<IReadOnlyList<TaggedCorner[]>> Pieces)> Fields(FinishedFace part)
    {
        var pieces = _saw.Parts(part.TaggedRings(), Math.Max(FoldSaw.Least, _joint.Steps / 2.0), part.Edges.Count).ToLookup(piece => _planes.FindIndex(plane => plane.Holds(FoldSaw.InsideOf(piece, part.Edges.Count))));
        return Enumerable.Range(0, _planes.Count).Where(pieces.Contains).Select(i => (_planes[i], (IReadOnlyList<IReadOnlyList<TaggedCorner[]>>)[.. pieces[i]]));
    }

    /// <summary>Says which planes the joints leave nothing of, and which holes no piece is drawn with.</summary>
    private void Check(Remarks remarks)
    {
        var fields = Fields(_whole).ToList();
        foreach (var lost in _planes.Except(fields.Select(field => field.Plane)))
        {
            var width = LengthText.Finer(Length.FromSteps((long)((double)lost.Area[0].DoubledArea / Around(lost.Area[0]))), remarks.Tape);
            var own = lost.Along.Select(k => _folds[k].Line).Where(line => line >= 0).Distinct().Order().ToList();
            if (own.Count == 0)
            {
                remarks.Find(FindingLevel.Note, "falls", _whole.Name, $"Its plane '{lost.Name}' is about {width} wide, and the joints leave nothing of it to tile.");
                continue;
            }

            var last = (own[^1] + 1).ToString(CultureInfo.InvariantCulture);
            var at = string.Create(CultureInfo.InvariantCulture, $"{_path}.falls.lines[{own[^1]}]");
            // A fold that crosses others leaves several such planes beside it.
            if (remarks.Faults.Exists(fault => string.Equals(fault.Path, at, StringComparison.Ordinal))) continue;
            remarks.Refuse(
                at, $"a plane about {width} wide beside fold {last}, of which the joints leave nothing",
                $"a plane wider than the joint along its folds, {LengthText.Finer(_joint, remarks.Tape)}, and that at an edge", $"fold {last} left out, or further from what runs beside it");
        }

        foreach (var hole in _whole.Holes.Where(hole => _folds.Count > 0 && HoleChecks.Of(hole, _whole.Field) == OnTile.Wholly && _folds.Any(fold => Nearby.Off(fold.From, fold.To, hole.Centre) < (hole.Diameter + _joint).Steps / 2.0)))
        {
            remarks.Find(FindingLevel.Warn, "hole", _whole.Name, $"The hole '{hole.Name}' lies on a fold: no piece is drawn with it cut out. The cut list says of each tile that it falls on where its middle lies: mark it there by hand.");
        }
    }

    private static double Around(Ring ring) => ring.Points.Select((point, i) => Nearby.Distance(Nearby.Of(point), Nearby.Of(ring.Points[(i + 1) % ring.Points.Count]))).Sum();

    private Ring Outline(Bent plane)
    {
        var ends = _folds.SelectMany(fold => new[] { fold.From, fold.To }).ToList();
        var points = new List<Point>();
        foreach (var point in plane.Area[0].Points)
        {
            var end = ends.MinBy(end => Nearby.Distance(Nearby.Of(end), Nearby.Of(point)));
            var corner = Nearby.Distance(Nearby.Of(end), Nearby.Of(point)) <= Corner ? end : point;
            if (points.Count == 0 || points[^1] != corner) points.Add(corner);
        }

        if (points[0] == points[^1]) points.RemoveAt(points.Count - 1);
        var ring = new Ring(points.ToSequence());
        return RingChecks.IsSimple(ring) ? ring : plane.Area[0];
    }

    private static bool Sees(Ring outline, FloorSides sides, Point drain, Point place) => Enumerable.Range(sides.First, sides.Count).Any(i =>
    {
        var (from, to) = (outline.Points[i % outline.Points.Count], outline.Points[(i + 1) % outline.Points.Count]);
        return Segments.Turn(drain, from, place) >= 0 && Segments.Turn(drain, to, place) < 0;
    });
}
