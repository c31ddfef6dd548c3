using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Brings the faces of a job that ask for board to their sheets, and says what is bought for them.</summary>
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

            faces.Add(BoardMaker.Made(task, layout!, faces.Sum(face => face.Pieces.Count)));
        }

        var stocks = new List<BoardStock>();
        foreach (var board in job.Boards)
        {
            var own = faces.Where(face => face.Product == board).SelectMany(face => face.Pieces).ToList();
            if (own.Count == 0) continue;
            stocks.Add(SheetCutting.Cut(board, own));
            yield return null;
        }

        var sheets = stocks.SelectMany(stock => stock.Sheets).SelectMany(sheet => sheet.Pieces.Select(piece => (piece.Id, sheet.Number))).ToDictionary(piece => piece.Id, piece => piece.Number, StringComparer.Ordinal);
        yield return new(
            faces.Select(face => face with { Pieces = face.Pieces.Select(piece => piece with { Sheet = sheets[piece.Id] }).ToSequence() }).ToSequence(),
            stocks.ToSequence(), Corners(job, [.. tasks.Select(task => task.Task)]));
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

    /// <summary>What to buy: the sheets.</summary>
    public static IEnumerable<OrderLine> Orders(Job job, BoardPlan plan)
    {
        foreach (var stock in plan.Stocks)
        {
            var board = job.Boards.First(board => string.Equals(board.Name, stock.Product, StringComparison.Ordinal));
            var sure = stock.LowerBound == stock.Sheets.Count ? "no fewer give these pieces" : string.Create(CultureInfo.InvariantCulture, $"{stock.LowerBound} might do");
            var (area, sheet) = (plan.Faces.Where(face => face.Product == board).Sum(face => (decimal)face.Area), board.Width.Millimetres * board.Length.Millimetres);
            var flat = string.Create(CultureInfo.InvariantCulture, $"by area and 10 % it would be {TileOrder.ByArea(decimal.Round(area), 10, sheet).Packs}");
            yield return new Extra(board.Breakage, 0, null).Line(board.Name, "sheet", 1, stock.Sheets.Count, "board plan", $"{sure}; {flat}");
        }
    }

    /// <summary>What to buy by the pack: screws and tape, where a board names them.</summary>
    public static IEnumerable<SupplyLine> Supplies(Job job, BoardPlan plan)
    {
        foreach (var supply in job.Supplies)
        {
            var uses = new List<SupplyUse>();
            foreach (var face in plan.Faces)
            {
                if (IsNamed(supply, face.Product.Screws)) uses.Add(new(face.Face, face.Screws, string.Create(CultureInfo.InvariantCulture, $"{face.Screws} screws in {Pieces(face)}")));
                if (IsNamed(supply, face.Product.Tape)) uses.Add(new(face.Face, Metres(face.SeamLength), $"{Amounts.Distance(1000 * Metres(face.SeamLength), job.Tape)} of seams"));
            }

            if (plan.Corners > Length.Zero && plan.Faces.FirstOrDefault(face => face.Corners > Length.Zero && IsNamed(supply, face.Product.Tape)) is not null)
            {
                uses.Add(new("inside corners", Metres(plan.Corners), $"{Amounts.Distance(1000 * Metres(plan.Corners), job.Tape)}, each corner once"));
            }

            if (uses.Count > 0) yield return new(supply, uses.ToSequence());
        }

        static bool IsNamed(Supply supply, string? name) => string.Equals(supply.Name, name, StringComparison.Ordinal);
    }

    private static string Pieces(BoardedFace face) => face.Pieces.Count == 1 ? "1 piece" : string.Create(CultureInfo.InvariantCulture, $"{face.Pieces.Count} pieces");

    private static double Metres(Length length) => (double)length.Millimetres / 1000;

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

    /// <summary>How long the inside corners are that are taped: one that two boarded faces of a run share counts once.</summary>
    private static Length Corners(Job job, IReadOnlyList<BoardTask> tasks)
    {
        var sum = tasks.Aggregate(Length.Zero, (all, task) => all + Corner(task, null));
        foreach (var run in job.Runs)
        {
            var walls = run.Faces.Select(name => tasks.FirstOrDefault(task => string.Equals(task.Face.Face.Name, name, StringComparison.Ordinal))).ToList();
            for (var i = 0; i + 1 < walls.Count; i++)
            {
                if (walls[i] is { } left && walls[i + 1] is { } right) sum -= Length.Min(Corner(left, Hand.Right), Corner(right, Hand.Left));
            }
        }

        return sum;
    }

    private static Length Corner(BoardTask task, Hand? hand) =>
        BoardMaker.Corners(task.Face, side => hand is null || side.Hand == hand);
}
