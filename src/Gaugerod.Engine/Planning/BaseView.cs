using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>What goes under the tile of one face, looked at by itself while it is being read, before all of the job is planned.</summary>
public sealed class BaseView
{
    // Asked for in the app only, where heights are told at places.
    private readonly Lazy<BedSurface>? _surface;

    private BaseView(DrawnFace face, Bed? bed, FlatFace? flat, Sequence<Fault> faults)
    {
        (Outline, Openings, Bed, Flat, Faults) = (face.Outline.Ring, face.Openings.Select(opening => opening.Ring).ToSequence(), bed, flat, faults);
        _surface = bed is null ? null : new(() => BedMaker.Surface(face, bed.Request, bed.Drains));
    }

    /// <summary>The face as measured.</summary>
    public Ring Outline { get; }

    /// <summary>What opens in it or stands on it.</summary>
    public Sequence<Ring> Openings { get; }

    /// <summary>Its bed; null where it has none, or one that cannot lie so.</summary>
    public Bed? Bed { get; }

    /// <summary>How flat it is; null where it was not read, or cannot be reckoned.</summary>
    public FlatFace? Flat { get; }

    /// <summary>What cannot lie or be read so.</summary>
    public Sequence<Fault> Faults { get; }

    /// <summary>The view of a face; null where nothing of this is asked of it, or its own shape cannot be drawn.</summary>
    /// <param name="job">The job.</param>
    /// <param name="face">Which of its faces, from zero.</param>
    public static BaseView? Of(Job job, int face)
    {
        ArgumentNullException.ThrowIfNull(job);
        var given = job.Faces[face];
        if ((given.Falls?.Bed is null && given.Flatness is null) || FaceDrawing.Draw(new(face, given), new(job.Tape)) is not { } drawn) return null;
        var remarks = new Remarks(job.Tape);
        var bed = given.Falls is { } falls ? BedMaker.Make(drawn, falls, remarks) : null;
        var flat = given.Flatness is { } read ? FlatMaker.Make(drawn, read, given.Falls is null ? Limits(job, given, read) : [], remarks) : null;
        return new(drawn, bed, flat is null ? null : flat with { IsFalling = given.Falls is not null }, remarks.Faults.ToSequence());
    }

    /// <summary>How high the bed stands over its drain at a place; null without a bed, and off the floor.</summary>
    public Length? Over(Point place) =>
        _surface is null || RingChecks.Locate(Outline, place) == Whereabouts.Outside || Openings.Any(opening => RingChecks.Locate(opening, place) == Whereabouts.Inside)
            ? null : BedMaker.Of(_surface.Value.At(Place.Of(place)));

    private static Sequence<GapLimit> Limits(Job job, Face face, FlatReadings read)
    {
        // The largest tile on it is the hardest to please.
        var sides = JobBases.RunsOn(job, face).SelectMany(run => JobRuns.ProductsOf(job, run)).Select(product => Length.Max(product.Width, product.Height)).ToList();
        return sides.Count == 0 ? [] : GapLimits.Of(sides.Max(), read.IsFloor, job.Tape, job.Region);
    }
}
