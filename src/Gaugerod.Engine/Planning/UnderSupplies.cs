using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What goes on the faces of a job before their tile: primer, membrane and what is laid into it, filler.</summary>
internal static class UnderSupplies
{
    public static IEnumerable<(string Of, SupplyUse Use)> Of(Job job, JobBases bases, BoardPlan boards, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike)
    {
        var faces = job.Faces.Select((face, i) => (Face: face, Drawn: face.Under is null ? null : FaceDrawing.Draw(new(i, face), new(job.Tape)))).Where(face => face.Drawn is not null).ToList();
        var banded = EdgesOnce.Of(faces.SelectMany(face => Banded(face.Drawn!)), alike);
        foreach (var (face, drawn) in faces)
        {
            var under = face.Under!;
            if (under.Primer is { } primer)
            {
                var area = (Coating.Whole(drawn!, null) + Coating.Linings(drawn!, null)) * primer.Coats;
                yield return (primer.Of, new(face.Name, area / 1e6, $"{Amounts.Area(area, job.Tape)} of face{Lined(drawn!, null)}{CoatsWords.Of(primer.Coats)}"));
            }

            if (under.Membrane is { } membrane) yield return (membrane.Of, Membrane(job, drawn!, membrane, boards));
            if (under.Membrane?.Band is { } band && Banded(drawn!).Where(edge => banded.Contains(edge.At)).Sum(edge => edge.Length) is > 0 and var length)
            {
                yield return (band, new(face.Name, length / 1000, $"{Amounts.Distance(length, job.Tape)} of corners, foot and thresholds{(alike.Any(pair => IsAt(pair.One) || IsAt(pair.Other)) ? ", a corner of two faces once" : "")}"));
            }

            bool IsAt(EdgeOfFace edge) => string.Equals(edge.Face, face.Name, StringComparison.Ordinal);

            if (under.Filler is { } filler && bases.Flat.FirstOrDefault(flat => string.Equals(flat.Face, face.Name, StringComparison.Ordinal)) is { } flat && flat.ToFill is { Volume: > 0 } levelling)
            {
                yield return (filler, new(face.Name, levelling.Volume / 1e6, $"{Amounts.Area(levelling.Area, job.Tape)} brought in by its readings"));
            }
        }
    }

    /// <summary>What a membrane covers of a face, in mm².</summary>
    public static double Area(DrawnFace face, MembraneRequest membrane, BoardPlan boards) => (membrane.Bands is { } band ? Coating.Bands(face, membrane.To, band, Seams(face, boards)) : Coating.Whole(face, membrane.To)) + Coating.Linings(face, membrane.To);

    // All seams of the face, those above the membrane too: they are not told apart by height.
    private static double Seams(DrawnFace face, BoardPlan boards) => boards.Faces.Where(boarded => string.Equals(boarded.Face, face.Face.Name, StringComparison.Ordinal)).Sum(boarded => (double)boarded.SeamLength.Millimetres);

    private static string Lined(DrawnFace face, Length? to) => Coating.Linings(face, to) > 0 ? " and of what lines its niches" : "";

    private static SupplyUse Membrane(Job job, DrawnFace face, MembraneRequest membrane, BoardPlan boards)
    {
        var coat = job.Supplies.First(supply => string.Equals(supply.Name, membrane.Of, StringComparison.Ordinal)).Coat!;
        var area = Area(face, membrane, boards);
        var where = membrane.Bands is { } wide ? $" of bands {LengthText.Nearest(wide, job.Tape)} out from corners, foot, openings, holes and seams of board" : " of face";
        where += Lined(face, membrane.To);
        var high = membrane.To is { } to && to < face.Outline.Ring.Bounds.Top ? $", {LengthText.Nearest(to, job.Tape)} high" : "";
        var dry = coat.Dry is { } thick ? $" to dry to {Amounts.Mil(thick, job.Tape)}" : "";
        return new(face.Face.Name, Film.Litres(area / 1e6, coat.Wet), $"{Amounts.Area(area, job.Tape)}{where}{high}, {Amounts.Mil(coat.Wet, job.Tape)} wet{dry}{CoatsWords.Of(membrane.Coats)}");
    }

    // What is said to be sealed from the other face has its band there too.
    private static IEnumerable<(EdgeOfFace At, double Length)> Banded(DrawnFace face) => face.Face.Under?.Membrane is { Band: not null } membrane
        ? Coating.Along(face, membrane.To).Where(edge => !face.Outline.Sides.Any(side => !side.Edge.IsSealed && string.Equals(side.Name, edge.Edge, StringComparison.Ordinal))).Select(edge => (new EdgeOfFace(face.Face.Name, edge.Edge), edge.Length)) : [];
}
