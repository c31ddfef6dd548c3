using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Gathers for the client what is in a plan and what the setter noted. Nothing of a plan hangs on it, so it is gathered when it is asked for.</summary>
public static class HandingOver
{
    /// <summary>What is handed over; null where the job does not ask for it.</summary>
    public static HandedOver? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Job.HandOver is not { } request) return null;
        var soft = Soft(plan);
        return new(request, Lots(plan, request), Left(plan), soft, plan.Movement, request.Photographs.Count > 0 ? [] : ToPhotograph(plan, soft.Count + plan.Movement.Count > 0));
    }

    private static Sequence<UsedLots> Lots(Plan plan, HandOverRequest request)
    {
        var notes = request.Lots.ToLookup(note => note.Of, StringComparer.Ordinal);
        var used = plan.Cutting.Select(cutting => (Name: cutting.Product, What: "tile", Stays: true))
            .Concat(plan.Trims.Stocks.Select(stock => (Name: stock.Product, What: "trim", Stays: true)))
            .Concat(plan.Boards.Stocks.Select(stock => (Name: stock.Product, What: "board", Stays: false)))
            .Concat(plan.Supplies.Select(line => (line.Supply.Name, What: HandOverWords.Of(line.Supply.Kind), Stays: IsAskedFor(line.Supply.Kind))));
        var lots = used.Where(one => one.Stays || notes.Contains(one.Name)).Select(one => new UsedLots(one.Name, one.What, notes[one.Name].ToSequence())).ToList();
        // What the plan does not take was noted all the same, so somebody used it.
        lots.AddRange(notes.Where(note => !lots.Exists(one => string.Equals(one.Of, note.Key, StringComparison.Ordinal))).Select(note => new UsedLots(note.Key, "", note.ToSequence())));
        return lots.ToSequence();
    }

    /// <summary>What is bought again for a repair, and has to match.</summary>
    private static bool IsAskedFor(SupplyKind kind) => kind is SupplyKind.Mortar or SupplyKind.Grout or SupplyKind.Sealant or SupplyKind.Sealer or SupplyKind.Membrane;

    private static Sequence<LeftOver> Left(Plan plan)
    {
        var kept = plan.Cutting.ToDictionary(cutting => cutting.Product, cutting => Offcuts(cutting, plan.Job.Cutting.Keep), StringComparer.Ordinal);
        var trims = plan.Trims.Stocks.Select(stock => stock.Product).ToHashSet(StringComparer.Ordinal);
        return plan.Order.Where(line => kept.ContainsKey(line.Item) || trims.Contains(line.Item))
            .Select(line => new LeftOver(line.Item, line.Unit, line.Spares, line.Over, line.Breakage + line.Flat, kept.GetValueOrDefault(line.Item))).ToSequence();
    }

    private static int Offcuts(ProductCutting cutting, Length keep) => cutting.Tiles.SelectMany(tile => tile.Left).Count(box => Length.Min(box.Width, box.Height) >= keep);

    private static Sequence<SoftEdge> Soft(Plan plan)
    {
        var alike = SameCorners.Of(plan.Job, plan.Runs);
        return SoftSupplies.All(plan.Runs, alike).Where(joint => joint.Kind is not null)
            .GroupBy(joint => (joint.Run, joint.At, joint.Kind, joint.Width))
            .Select(joint => new SoftEdge(joint.Key.Run, joint.Key.At.Face, joint.Key.At.Edge, joint.Key.Kind!.Value, joint.Key.Width, joint.Sum(part => part.Length), With(joint.Key.At, alike))).ToSequence();
    }

    // A corner may be named on more than two faces: its edges hang together one by one.
    private static Sequence<string> With(EdgeOfFace at, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike)
    {
        var (found, next) = (new List<EdgeOfFace> { at }, 0);
        for (; next < found.Count; next++)
        {
            var here = found[next];
            found.AddRange(alike.Where(pair => pair.One == here || pair.Other == here).Select(pair => pair.One == here ? pair.Other : pair.One).Distinct().Where(edge => !found.Contains(edge)));
        }

        return found.Skip(1).Select(edge => $"{edge.Edge} of {edge.Face}").ToSequence();
    }

    private static Sequence<string> ToPhotograph(Plan plan, bool hasSoft)
    {
        var isMembraned = plan.Work?.Request.Coats > 0 || plan.Supplies.Any(line => line.Supply.Kind is SupplyKind.Membrane or SupplyKind.Band);
        var isTested = plan.Work?.Request.Flood is not null || plan.Job.HandOver!.Tests.Count > 0;
        var places = new List<string> { "pipes, wires and studs of each face before boards go on, with a rule held beside them" };
        if (plan.Boards.Faces.Count > 0) places.Add("boards with their seams and screws");
        if (isMembraned) places.Add("the membrane with its corners, holes and drain before tile goes on");
        if (isTested) places.Add("the water of the flood test with its mark, at the start and at the end");
        if (hasSoft) places.Add("each soft joint when it is new");
        return places.ToSequence();
    }
}
