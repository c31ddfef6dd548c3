using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;

namespace Gaugerod.Engine.Planning;

/// <summary>Which run a line of trim is worked with, and how much work it is: one count for prices and for the order of work.</summary>
internal static class RunTrims
{
    /// <summary>The lines by their run: a wall in several runs has its trims once, with the first of them.</summary>
    public static ILookup<string, PlannedTrim> Of(IReadOnlyList<RunPlan> runs, TrimPlan trims) => trims.Lines.ToLookup(
        line => runs.FirstOrDefault(run => run.Faces.Any(face => IsOf(face.Face, line.Face)))?.Request.Name ?? runs[0].Request.Name, StringComparer.Ordinal);

    /// <summary>How many pieces are set: those of the lines, what goes on round their ends, corner pieces, one that two lines share once.</summary>
    public static int Pieces(IReadOnlyCollection<PlannedTrim> lines) =>
        lines.Sum(line => line.Pieces.Count + line.Returns.Count) + lines.SelectMany(line => line.CornerPieces).DistinctBy(piece => piece.Id, StringComparer.Ordinal).Count();

    /// <summary>How long they are, in metres.</summary>
    public static double Metres(IEnumerable<PlannedTrim> lines) => lines.Sum(line => (double)line.Length.Millimetres) / 1000;

    private static bool IsOf(FinishedFace face, string name) => face.IsCalled(name) || string.Equals(face.Wall, name, StringComparison.Ordinal);
}
