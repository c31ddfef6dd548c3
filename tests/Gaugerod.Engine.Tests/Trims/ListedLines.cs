using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Lists every arrangement of a line, step by step, and takes the best: it knows no ranges, no order of search and none of the program's costs.</summary>
internal static class ListedLines
{
    public static string Best(LineCase asked)
    {
        var line = asked.Line;
        (bool, int, int, int, int, long, long)? best = null;
        var told = "none";
        if (asked.Joints == TrimJoints.Centred) Halves([]);
        else Grow([], line.Length);
        return told;

        void Grow(List<long> pieces, long left)
        {
            if (left >= line.Least && left <= line.Stock) Judge([.. pieces, left], line.Joint, 0);
            for (var next = line.Least; next <= line.Stock && left - next - line.Joint >= line.Least; next++)
            {
                Grow([.. pieces, next], left - next - line.Joint);
            }
        }

        void Halves(List<long> half)
        {
            // On the middle: nothing (one joint), or a piece.
            var taken = 2 * (half.Sum() + (half.Count * line.Joint));
            var room = line.Length - taken;
            var mirrored = half.AsEnumerable().Reverse();
            if (half.Count > 0 && room + line.Joint is 0 or 1) Judge([.. half, .. mirrored], line.Joint, room + line.Joint);
            if (room >= line.Least && room <= line.Stock) Judge([.. half, room, .. mirrored], line.Joint, 0);
            if (room == line.Stock + 1 && half.Count > 0) Judge([.. half, line.Stock, .. mirrored], line.Joint, 1);
            for (var next = line.Least; next <= line.Stock && taken + (2 * next) <= line.Length; next++) Halves([.. half, next]);
        }

        void Judge(List<long> pieces, long joint, long odd)
        {
            var last = pieces.Count - 1;
            var (cuts, trimmed, inner) = (0, 0, 0);
            for (var i = 0; i <= last; i++)
            {
                var mitres = (i == 0 && line.Begin == TrimEnd.Mitre ? 1 : 0) + (i == last && line.End == TrimEnd.Mitre ? 1 : 0);
                var isShort = pieces[i] < line.Stock;
                cuts += mitres > 0 ? mitres : isShort ? 1 : 0;
                if (!isShort) continue;
                trimmed++;
                if (i > 0 && i < last) inner++;
            }

            var shortest = pieces.Select((piece, i) => piece - (i == 0 ? line.BeginTakes : 0) - (i == last ? line.EndTakes : 0)).Min();
            if (shortest < line.Least) return;
            if (last == 0 && trimmed > 0 && line.Begin is TrimEnd.Stop or TrimEnd.Covers && line.End is TrimEnd.Stop or TrimEnd.Covers) return;
            var middles = new List<long>();
            var at = 0L;
            for (var i = 0; i < last; i++)
            {
                at += pieces[i];
                middles.Add((2 * at) + joint + (odd == 1 && last % 2 == 1 && i == last / 2 ? 1 : 0));
                at += joint;
            }

            long? stagger = middles.Count == 0 || line.Beside.Count == 0 ? null : middles.Min(m => line.Beside.Min(f => Math.Abs(m - f.From - f.To)));
            if (last > 0 && asked.Joints == TrimJoints.InLine && !middles.TrueForAll(m => line.Beside.Any(f => f.From + f.To - m is 0 or 1))) return;
            if (last > 0 && asked.Joints == TrimJoints.Repeating)
            {
                if (line.Beside.Count < 2) return;
                var round = 2 * (line.Beside[1].From - line.Beside[0].From);
                var past = middles.Select(m => (((m - line.Beside[0].From - line.Beside[0].To) % round) + round) % round).Distinct().ToList();
                if (past.Count > 1) return;
                stagger = Math.Min(past[0], round - past[0]);
            }

            if (stagger < asked.Twice) return;
            var counts = asked.Joints is TrimJoints.Staggered or TrimJoints.Repeating ? stagger ?? 0 : 0;
            var score = (asked.Joints == TrimJoints.Centred && inner > 0, cuts, trimmed, inner, pieces.Count, -counts, -shortest);
            if (best is { } known && score.CompareTo(known) >= 0) return;
            best = score;
            told = asked.Told(cuts, trimmed, inner, pieces.Count, stagger, shortest);
        }
    }
}
