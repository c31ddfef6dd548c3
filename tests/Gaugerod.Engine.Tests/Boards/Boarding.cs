using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>Invented walls and floors with board on them.</summary>
internal static class Boarding
{
    public static readonly BoardProduct FourByEight = new("board", Length.FromInches(48), Length.FromInches(96), Length.FromInches(0, 1, 2)) { ScrewsApart = Length.FromInches(8), Inset = Length.FromInches(0, 1, 2) };

    public static readonly BoardProduct ThreeByFive = FourByEight with { Width = Length.FromInches(36), Length = Length.FromInches(60) };

    /// <summary>A face by its corners, with openings as left, bottom, width and height; no gaps at its edges.</summary>
    public static Face Face(BoardRequest request, Point[] corners, params Box[] openings)
    {
        string[] names = ["foot", "right", "head", "left"];
        var edges = corners.Select((_, i) => new Edge(i < 4 ? names[i] : $"side {i}", i % 2 == 1 ? EdgeKind.InsideCorner : i == 0 ? EdgeKind.Floor : EdgeKind.Ceiling)).ToSequence();
        var held = openings.Select((box, i) => new Opening($"window {i}", Ring.Of(box), [.. new[] { "bottom", "right", "top", "left" }.Select(side => new Edge(side, EdgeKind.Fixture))]));
        return new("wall", new FaceShape.Outline(new(corners.ToSequence()), edges, default), held.ToSequence(), []) { Board = request };
    }

    /// <summary>A rectangle of so many inches.</summary>
    public static Face Face(BoardRequest request, long width, long height, params Box[] openings) => Face(request, [.. Inches(0, 0, width, height).Corners()], openings);

    public static Box Inches(long left, long bottom, long width, long height) => new(Length.FromInches(left), Length.FromInches(bottom), Length.FromInches(left + width), Length.FromInches(bottom + height));

    public static Studs Every(long inches, long from) => new() { From = Length.FromInches(from), Apart = Length.FromInches(inches), Width = Length.FromInches(1, 1, 2) };

    public static BoardTask Task(Face face, BoardProduct board)
    {
        var remarks = new Remarks(Tape.Sixteenths);
        var drawn = FaceDrawing.Draw(new(0, face), remarks)!;
        var task = BoardTask.Of(drawn, board, remarks);
        Assert.Empty(remarks.Faults);
        return task!;
    }

    public static BoardedFace Planned(Face face, BoardProduct board, JointBands? joints = null) => Planned(Task(face, board), joints);

    public static BoardedFace Planned(BoardTask task, JointBands? joints = null) => BoardMaker.Made(task, BoardPlanner.Steps(task, joints ?? JointBands.None).Last()!, 0);
}
