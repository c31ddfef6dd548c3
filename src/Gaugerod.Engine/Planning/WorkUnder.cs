using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Planning;

/// <summary>The tasks before the first line is snapped: what is covered, taken out, put up, made flat and watertight.</summary>
internal static class WorkUnder
{
    /// <summary>A task that those to come wait for, and what it has to do first.</summary>
    internal readonly record struct Wait(int Task, HoldKind? Hold, Supply? Product);

    /// <summary>Adds them.</summary>
    /// <returns>What lines wait for.</returns>
    public static List<Wait> Add(WorkMaking making)
    {
        var (area, last) = (new WorkAmount(PaceUnit.SquareMetres, making.Runs.Sum(run => run.Area)), new List<Wait>());
        Step(new("protection", WorkKind.Protection), null);
        if (making.IsAsked(WorkKind.TearOut)) Step(new("tear-out", WorkKind.TearOut), null);
        if (making.IsBoarded || making.IsAsked(WorkKind.Boards)) Step(new("boards", WorkKind.Boards), null, over: making.Boards.Faces.Count > 0 ? making.Boards.Faces.Sum(face => (double)face.Area) / 1e6 : null);
        if (making.IsBoarded || making.IsAsked(WorkKind.Seams)) Step(new("seams", WorkKind.Seams), HoldKind.Seams);
        Surfaces(making, last);
        var (primer, membrane) = (making.Under.Select(under => under.Primer).OfType<Coated>().FirstOrDefault(), making.Under.Select(under => under.Membrane).OfType<MembraneRequest>().MaxBy(one => one.Coats));
        if (primer is not null || making.IsAsked(WorkKind.Primer)) Step(new("primer", WorkKind.Primer), HoldKind.Primer, making.Of(primer?.Of), making.Coated((face, under) => under.Primer is null ? null : Coating.Whole(face, null)));
        var coats = making.Asked.Coats > 0 ? making.Asked.Coats : membrane?.Coats ?? 0;
        for (var coat = 1; coat <= coats; coat++)
        {
            Step(new(TaskNames.Coat(coat), WorkKind.Membrane), HoldKind.Coat, making.Of(membrane?.Of), making.Coated((face, under) => under.Membrane is { } of ? UnderSupplies.Area(face, of) : null));
        }

        if (making.Asked.Flood is not null)
        {
            if (coats > 0) last[0] = last[0] with { Hold = HoldKind.Test };
            Step(new("flood test", WorkKind.FloodTest), HoldKind.Flood);
        }

        return last;

        void Step(WorkTask task, HoldKind? hold, Supply? product = null, double? over = null)
        {
            // By what is boarded or coated; where the job does not say what that is, by all that is tiled.
            var at = making.Add(task, over is { } known ? new(PaceUnit.SquareMetres, known) : area, new WorkAmount(PaceUnit.Metres, (double)making.Boards.Tape.Millimetres / 1000));
            foreach (var wait in last) making.After(wait.Task, at, wait.Hold, wait.Product);
            last.Clear();
            last.Add(new(at, hold, product));
        }
    }

    /// <summary>Faces are levelled and beds laid beside each other.</summary>
    private static void Surfaces(WorkMaking making, List<Wait> last)
    {
        var before = last.ToList();
        foreach (var flat in making.Bases.Flat.Where(flat => flat is { IsFalling: false, ToFill.Volume: > 0 }))
        {
            Add(new(TaskNames.Level(flat.Face), WorkKind.Levelling) { Faces = [flat.Face] }, flat.ToFill!.Area, HoldKind.Levelling, making.Of(making.FillerOf(flat.Face)));
        }

        foreach (var bed in making.Bases.Beds) Add(new(TaskNames.Bed(bed.Face), WorkKind.Bed) { Faces = [bed.Face] }, bed.Area, HoldKind.Bed, null);

        void Add(WorkTask task, double area, HoldKind hold, Supply? product)
        {
            if (last.SequenceEqual(before)) last.Clear();
            var at = making.Add(task, new WorkAmount(PaceUnit.SquareMetres, area / 1e6));
            foreach (var wait in before) making.After(wait.Task, at, wait.Hold, wait.Product);
            last.Add(new(at, hold, product));
        }
    }
}
