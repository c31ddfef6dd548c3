using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>The tasks of setting tile: lines, each face from its line up, the cut course below, returns; walls before floors or after them.</summary>
internal sealed class WorkSetting(WorkMaking making, List<WorkUnder.Wait> under)
{
    private readonly List<Stages> _stages = [];

    /// <summary>The tasks of one face; null where there is nothing of a kind to do.</summary>
    private sealed record Stages(RunWork Run, FaceWork Face, int Up, int? Below);

    /// <summary>Adds them.</summary>
    /// <returns>All that is set, by its run.</returns>
    public ILookup<string, int> Add()
    {
        var floorFirst = making.Asked.FloorFirst;
        foreach (var run in making.Runs)
        {
            var lines = making.Add(new(TaskNames.Lines(run.Run.Name), WorkKind.Lines) { Run = run.Run.Name }, new WorkAmount(PaceUnit.Lines, run.Lines));
            foreach (var wait in under) making.After(wait.Task, lines, wait.Hold, wait.Product);
        }

        foreach (var (run, face) in Faces().OrderBy(one => one.Face.IsFloor != floorFirst)) AddUp(run, face);
        if (floorFirst) CoverFloors();
        else FloorsAfterWalls();
        for (var i = 0; i < _stages.Count; i++) AddBelow(i);
        OverEachOther();
        var all = _stages.SelectMany(stages => new[] { stages.Up, stages.Below }.OfType<int>().Select(task => (stages.Run.Run.Name, Task: task))).ToList();
        all.AddRange(Waiting());
        all.AddRange(_stages.Where(stages => stages.Face.Returns > 0).Select(stages => (stages.Run.Run.Name, Returns(stages))).ToList());
        return all.ToLookup(one => one.Name, one => one.Task, StringComparer.Ordinal);
    }

    private IEnumerable<(RunWork Run, FaceWork Face)> Faces() => making.Runs.SelectMany(run => run.Faces.Select(face => (run, face)));

    private bool Waits(Piece piece) => making.Asked.Made.Any(made => made.Pieces.Contains(piece.Id, StringComparer.Ordinal));

    private void AddUp(RunWork run, FaceWork face)
    {
        var at = Set(run, face, TaskNames.Set(face.Face), SetStage.Up, face.Up.Where(piece => !Waits(piece)).ToSequence());
        making.After(making.Graph.Tasks.ToList().FindIndex(task => task.Kind == WorkKind.Lines && string.Equals(task.Run, run.Run.Name, StringComparison.Ordinal)), at);

        // Each wall of a run is cut to the one before it.
        if (_stages.LastOrDefault(stages => ReferenceEquals(stages.Run, run)) is { } before) making.After(before.Up, at);
        _stages.Add(new(run, face, at, null));
    }

    private void AddBelow(int index)
    {
        var (run, face) = (_stages[index].Run, _stages[index].Face);
        if (face.Below.Count == 0) return;
        var at = Set(run, face, TaskNames.Below(face.Face), SetStage.Below, face.Below.Where(piece => !Waits(piece)).ToSequence());
        making.After(_stages[index].Up, at, HoldKind.Support, run.Mortar);

        // The lowest course is cut to the floor's tile, from which it is set.
        foreach (var floor in _stages.Where(stages => stages.Face.IsFloor)) making.After(floor.Up, at, HoldKind.Walk, floor.Run.Mortar);
        _stages[index] = _stages[index] with { Below = at };
    }

    private void FloorsAfterWalls()
    {
        foreach (var floor in _stages.Where(stages => stages.Face.IsFloor))
        {
            // A batten that still holds up a wall stands in the way.
            foreach (var wall in _stages.Where(stages => !stages.Face.IsFloor)) making.After(wall.Up, floor.Up, wall.Face.Below.Count > 0 ? HoldKind.Support : null, wall.Run.Mortar);
        }
    }

    private void CoverFloors()
    {
        var (floors, walls) = (_stages.Where(stages => stages.Face.IsFloor).ToList(), _stages.Where(stages => !stages.Face.IsFloor).ToList());
        if (floors.Count == 0 || walls.Count == 0) return;
        var area = floors.SelectMany(floor => floor.Face.Up).Sum(RunWorks.Area);
        var cover = making.Add(new("floor cover", WorkKind.FloorCover) { Faces = floors.Select(floor => floor.Face.Face).ToSequence() }, new WorkAmount(PaceUnit.SquareMetres, area));
        foreach (var floor in floors) making.After(floor.Up, cover, HoldKind.Walk, floor.Run.Mortar);
        foreach (var wall in walls) making.After(cover, wall.Up);
    }

    // What stands above other tile of its wall is set after it.
    private void OverEachOther()
    {
        foreach (var wall in _stages.Where(stages => !stages.Face.IsFloor).GroupBy(stages => stages.Face.Wall, StringComparer.Ordinal))
        {
            var up = wall.OrderBy(stages => stages.Face.Bottom).ToList();
            for (var i = 1; i < up.Count; i++)
            {
                if (up[i].Face.Bottom > up[i - 1].Face.Bottom && !making.Graph.Reaches(up[i].Up, up[i - 1].Up)) making.After(up[i - 1].Up, up[i].Up);
            }
        }
    }

    private List<(string Run, int Task)> Waiting()
    {
        var all = new List<(string, int)>();
        foreach (var made in making.Asked.Made)
        {
            foreach (var stages in _stages)
            {
                var pieces = stages.Face.Up.Concat(stages.Face.Below).Where(piece => made.Pieces.Contains(piece.Id, StringComparer.Ordinal)).ToSequence();
                if (pieces.Count == 0) continue;
                var at = Set(stages.Run, stages.Face, TaskNames.Waiting(stages.Face.Face, made.Name), SetStage.Waiting, pieces, made.Name);
                making.After(stages.Below ?? stages.Up, at);
                all.Add((stages.Run.Run.Name, at));
            }
        }

        return all;
    }

    private int Returns(Stages stages)
    {
        var at = making.Add(new(TaskNames.Returns(stages.Face.Face), WorkKind.Returns) { Run = stages.Run.Run.Name, Faces = [stages.Face.Face] }, new WorkAmount(PaceUnit.Metres, stages.Face.Returns));
        making.After(stages.Up, at);
        return at;
    }

    private int Set(RunWork run, FaceWork face, string name, SetStage stage, Sequence<Piece> pieces, string? awaits = null)
    {
        var task = new WorkTask(name, WorkKind.Setting) { Run = run.Run.Name, Faces = [face.Face], Stage = stage, Awaits = awaits, Pieces = stage == SetStage.Up ? [] : pieces.Select(piece => piece.Id).ToSequence() };
        return Mixed.Add(making, task, pieces, run);
    }
}
