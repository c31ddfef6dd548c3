using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;

namespace Gaugerod.App.Desk;

/// <summary>What goes under the tile of a face, as the job was last read: its pictures follow the readings, the plan comes after.</summary>
internal sealed partial class JobDesk
{
    private readonly Dictionary<int, (Job Job, int At, BaseView? View)> _bases = [];

    // By the face's name: for each the job as it was when nothing of that face was at fault, and which of its faces it is.
    private readonly Dictionary<string, (Job Job, int At)> _readable = new(StringComparer.Ordinal);

    /// <summary>The job as it was last read with no fault in a face, whatever is wanting elsewhere: the bed does not hang on the tile. Null before that.</summary>
    /// <param name="face">Which face.</param>
    public Job? JobOf(int face) => _readable.TryGetValue(NameOf(face), out var read) ? read.Job : null;

    /// <summary>The beds and readings of a face; null where there are none, or they cannot be reckoned.</summary>
    /// <param name="face">Which face.</param>
    public BaseView? Base(int face)
    {
        if (!_readable.TryGetValue(NameOf(face), out var read)) return null;
        // A bed takes its time, and most of what is typed is no part of it.
        if (!_bases.TryGetValue(face, out var known) || !IsSame(known.Job, known.At, read.Job, read.At)) _bases[face] = known = (read.Job, read.At, BaseView.Of(read.Job, read.At));
        return known.View;
    }

    /// <summary>The beds and readings of a face as they were last reckoned, without reckoning them; null where they were not.</summary>
    /// <param name="face">Which face.</param>
    public BaseView? KnownBase(int face) => _readable.TryGetValue(NameOf(face), out var read) && _bases.TryGetValue(face, out var known) && IsSame(known.Job, known.At, read.Job, read.At) ? known.View : null;

    private string NameOf(int face) => JobPath.Get(Root, string.Create(CultureInfo.InvariantCulture, $"faces[{face}].name"))?.ToString() ?? "";

    // Faces that could not be read are left out of the job, so that their places are other ones there.
    private void Keep(TextRead read)
    {
        if (read.AsFar is not { } asFar) return;
        var job = asFar with { Runs = asFar.Runs.Where(run => run.Bond.With.Prepend(run.Product).All(name => asFar.Products.Any(product => string.Equals(product.Name, name, StringComparison.Ordinal)))).ToSequence() };
        for (var i = 0; i < (JobPath.Get(Root, "faces") as JsonArray ?? []).Count; i++)
        {
            var (name, path) = (NameOf(i), string.Create(CultureInfo.InvariantCulture, $"faces[{i}]"));
            var at = job.Faces.ToList().FindIndex(face => string.Equals(face.Name, name, StringComparison.Ordinal));
            if (at >= 0 && !read.Faults.Any(fault => fault.Path.StartsWith(path, StringComparison.Ordinal))) _readable[name] = (job, at);
        }
    }

    // Only a face that does not fall is judged by the tile on it.
    private static bool IsSame(Job old, int before, Job now, int at) =>
        (ReferenceEquals(old, now) && before == at)
        || (old.Tape == now.Tape && old.Faces[before] == now.Faces[at] && (now.Faces[at].Falls is not null || (old.Products.Equals(now.Products) && old.Runs.Equals(now.Runs))));
}
