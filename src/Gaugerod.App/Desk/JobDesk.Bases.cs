using Gaugerod.Engine.Planning;

namespace Gaugerod.App.Desk;

/// <summary>What goes under the tile of a face, as the job was last read: its pictures follow the readings, the plan comes after.</summary>
internal sealed partial class JobDesk
{
    private readonly Dictionary<int, (Job Job, BaseView? View)> _bases = [];

    /// <summary>The beds and readings of a face; null where there are none, or they cannot be reckoned.</summary>
    /// <param name="face">Which face.</param>
    public BaseView? Base(int face)
    {
        if (Job is not { } job || face >= job.Faces.Count) return null;
        // A bed takes its time, and most of what is typed is no part of it.
        if (!_bases.TryGetValue(face, out var known) || !IsSame(known.Job, job, face)) _bases[face] = known = (job, BaseView.Of(job, face));
        return known.View;
    }

    private static bool IsSame(Job old, Job now, int face) =>
        ReferenceEquals(old, now)
        || (face < old.Faces.Count && old.Tape == now.Tape && old.Faces[face] == now.Faces[face] && old.Products.Equals(now.Products) && old.Runs.Equals(now.Runs));
}
