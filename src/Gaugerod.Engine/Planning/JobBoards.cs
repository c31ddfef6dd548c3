using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Brings the faces of a job that ask for board to their sheets.</summary>
internal static class JobBoards
{
    /// <summary>The boards, a little at a time: nothing until the last.</summary>
    /// <param name="job">The job, without a fault.</param>
    /// <param name="runs">What is tiled, whose joints seams keep from where water runs.</param>
    public static IEnumerable<BoardPlan?> Steps(Job job, IReadOnlyList<RunPlan> runs)
    {
        var (faces, tasks) = (new List<BoardedFace>(), Tasks(job, new(job.Tape)));
        foreach (var (_, task) in tasks)
        {
            SheetLayout? layout = null;
            foreach (var sofar in BoardPlanner.Steps(task, Joints(task, runs)))
            {
                layout = sofar ?? layout;
                yield return null;
            }

            faces.Add(BoardMaker.Made(task, layout!, faces.Sum(face => face.Cut.Count())));
        }

        var stocks = new List<BoardStock>();
        foreach (var board in job.Boards)
        {
            var own = faces.Where(face => face.Product == board).SelectMany(face => face.Cut).ToList();
            if (own.Count == 0) continue;
            stocks.Add(SheetCutting.Cut(board, own));
            yield return null;
        }

        var sheets = stocks.SelectMany(stock => stock.Sheets).SelectMany(sheet => sheet.Pieces.Select(piece => (piece.Id, sheet.Number))).ToDictionary(piece => piece.Id, piece => piece.Number, StringComparer.Ordinal);
        yield return new(
            faces.Select(face => face with
            {
                Pieces = face.Pieces.Select(piece => piece with { Sheet = sheets[piece.Id] }).ToSequence(),
                Niches = face.Niches.Select(niche => niche with { Pieces = niche.Pieces.Select(piece => piece with { Sheet = sheets[piece.Id] }).ToSequence() }).ToSequence(),
            }).ToSequence(),
            stocks.ToSequence(), Corners(job, runs, tasks.Select(task => task.Task)));
    }

    /// <summary>What cannot be boarded as it is asked.</summary>
    /// <param name="job">The job.</param>
    /// <param name="large">Whether many sheets are allowed.</param>
    public static IEnumerable<Fault> Faults(Job job, bool large)
    {
        var remarks = new Remarks(job.Tape);
        foreach (var (path, task) in Tasks(job, remarks)) BoardFaults.Find(task, path, large, remarks);
        return remarks.Faults;
    }

    private static List<(string Path, BoardTask Task)> Tasks(Job job, Remarks remarks)
    {
        var tasks = new List<(string Path, BoardTask Task)>();
        for (var i = 0; i < job.Faces.Count; i++)
        {
            // What is wrong with the face's own shape its run says.
            if (job.Faces[i].Board is not { } asked || FaceDrawing.Draw(new(i, job.Faces[i]), new(job.Tape)) is not { } drawn) continue;
            var board = job.Boards.First(board => string.Equals(board.Name, asked.Of, StringComparison.Ordinal));
            if (BoardTask.Of(drawn, board, remarks) is { } task) tasks.Add((drawn.Path + ".board", task));
        }

        return tasks;
    }

    /// <summary>The joints between tiles on a face, up to where water runs.</summary>
    private static JointBands Joints(BoardTask task, IReadOnlyList<RunPlan> runs)
    {
        if (task.Request.Wet is not { } wet) return JointBands.None;
        var (across, along) = (new List<Box>(), new List<Box>());
        foreach (var run in runs)
        {
            var joint = run.Best.Placing.Joint;
            foreach (var piece in run.Faces.Where(face => face.Face.Plane is null && string.Equals(face.Face.Wall, task.Face.Face.Name, StringComparison.Ordinal)).SelectMany(face => face.Pieces))
            {
                var points = piece.Outline.Points;
                for (var i = 0; i < points.Count; i++)
                {
                    var (a, b) = (points[i], points[(i + 1) % points.Count]);
                    if (Length.Min(a.Y, b.Y) >= wet) continue;
                    // Right sides run up, upper sides to the left: the joint is beyond them.
                    if (a.X == b.X && b.Y > a.Y) across.Add(task.Field.Turned(new Box(a.X, a.Y, a.X + joint, Length.Min(b.Y, wet))));
                    if (a.Y == b.Y && b.X < a.X) along.Add(task.Field.Turned(new Box(b.X, a.Y, a.X, a.Y + joint)));
                }
            }
        }

        return task.Request.Studs is { RunLevel: true } ? new(along, across) : new(across, along);
    }

    /// <summary>How long the inside corners are that are taped, one that two boarded faces share once.</summary>
    private static Length Corners(Job job, IReadOnlyList<RunPlan> runs, IEnumerable<BoardTask> tasks)
    {
        var corners = tasks.SelectMany(task => BoardMaker.Corners(task.Face).Select(corner => (At: new EdgeOfFace(task.Face.Face.Name, corner.Name), corner.Length))).ToList();
        var once = EdgesOnce.Of(corners.Select(corner => (corner.At, (double)corner.Length.Steps)), SameCorners.Of(job, runs));
        return corners.Where(corner => once.Contains(corner.At)).Aggregate(Length.Zero, (sum, corner) => sum + corner.Length);
    }
}
