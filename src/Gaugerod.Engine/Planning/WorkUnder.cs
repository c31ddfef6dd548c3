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
        var (primers, membranes) = (making.Under.Select(under => under.Primer).OfType<Coated>().ToList(), making.Under.Select(under => under.Membrane).OfType<MembraneRequest>().ToList());
        if (primers.Count > 0 || making.IsAsked(WorkKind.Primer)) Step(new("primer", WorkKind.Primer), HoldKind.Primer, Products(primers.Select(primer => primer.Of)), making.Coated((face, under) => under.Primer is null ? null : Coating.Whole(face, null) + Coating.Linings(face, null)));
        var coats = making.Asked.Coats > 0 ? making.Asked.Coats : membranes.Select(membrane => membrane.Coats).Append(0).Max();
        for (var coat = 1; coat <= coats; coat++)
        {
            Step(new(TaskNames.Coat(coat), WorkKind.Membrane), HoldKind.Coat, Products(membranes.Where(IsPutOn).Select(membrane => membrane.Of)), making.Coated((face, under) => under.Membrane is { } of && IsPutOn(of) ? UnderSupplies.Area(face, of, making.Boards) : null));

            // How many coats the order of work asks for goes for all of them.
            bool IsPutOn(MembraneRequest membrane) => making.Asked.Coats > 0 || membrane.Coats >= coat;
        }

        if (making.Asked.Flood is not null)
        {
            if (coats > 0) last = [.. Products(membranes.Select(membrane => membrane.Of)).Select(product => last[0] with { Hold = HoldKind.Test, Product = product })];
            Step(new("flood test", WorkKind.FloodTest), HoldKind.Flood);
        }

        return last;

        // Each of several that are put on at one time holds up what comes next by its own time, so the longest counts.
        IReadOnlyList<Supply?> Products(IEnumerable<string> of) => of.Distinct(StringComparer.Ordinal).Select(making.Of).DefaultIfEmpty(null).ToList();

        void Step(WorkTask task, HoldKind? hold, IReadOnlyList<Supply?>? products = null, double? over = null)
        {
            // By what is boarded or coated; where the job does not say what that is, by all that is tiled.
            var at = making.Add(task, over is { } known ? new(PaceUnit.SquareMetres, known) : area, new WorkAmount(PaceUnit.Metres, (double)making.Boards.Tape.Millimetres / 1000));
            foreach (var wait in last) making.After(wait.Task, at, wait.Hold, wait.Product);
            last.Clear();
            last.AddRange((products ?? [null]).Select(product => new Wait(at, hold, product)));
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
