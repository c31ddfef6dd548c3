using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>The joints between tiles where water runs, as rectangles; none where seams need not keep from them.</summary>
internal sealed class JointBands(IReadOnlyList<Box> plumb, IReadOnlyList<Box> level)
{
    public static JointBands None { get; } = new([], []);

    public bool Any => plumb.Count + level.Count > 0;

    /// <summary>How much of a seam's stretches lies under joints that run its way.</summary>
    /// <param name="isPlumb">Which way the seam runs.</param>
    /// <param name="from">Where the gap between the sheets begins, across the seam.</param>
    /// <param name="to">Where it ends; abutted sheets count as a step.</param>
    /// <param name="stretches">The seam.</param>
    public long Under(bool isPlumb, long from, long to, IReadOnlyList<Stretch> stretches)
    {
        var sum = 0L;
        if (to <= from) to = from + 1;
        foreach (var joint in isPlumb ? plumb : level)
        {
            var (left, right, low, high) = isPlumb
                ? (joint.Left.Steps, joint.Right.Steps, joint.Bottom.Steps, joint.Top.Steps)
                : (joint.Bottom.Steps, joint.Top.Steps, joint.Left.Steps, joint.Right.Steps);
            if (right <= from || left >= to) continue;
            foreach (var stretch in stretches) sum += Math.Max(0, Math.Min(high, stretch.To) - Math.Max(low, stretch.From));
        }

        return sum;
    }
}
