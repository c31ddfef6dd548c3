using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether boards meet what their makers print, and what of their layout could not be had.</summary>
internal static class BoardRules
{
    private const string Rule = "board", Practice = "common practice, no source";

    internal static IEnumerable<Finding> Findings(BoardPlan plan, Tape tape, Region? region, IReadOnlySet<string> floors)
    {
        if (plan.Faces.Count == 0) return [];
        var american = region is null or Region.America;
        return plan.Faces.SelectMany(face => Limits(face, tape, region, floors.Contains(face.Face)).Concat(Layout(face, tape))).Concat(plan.Faces.Select(face => face.Product).Distinct().SelectMany(product => Of(product, tape, region))).Append(new(
            FindingLevel.Note, "caution-board", "boards",
            "Cement board holds silica. Score it with a knife and snap it, outdoors or where the dust is drawn off; do not cut it dry with a power saw indoors, do not sweep dry, wear the mask that the local rules ask for. A sheet is heavy and long: carry it in twos. Before a screw goes in, know where wires and pipes run in the wall.",
            american ? "50 µg/m³ of air over 8 hours, action from 25 µg/m³" : $"as the law of {RegionWords.Long(region!.Value)} has it; no figure is held here", "",
            (american ? "29 CFR 1926.1153 (United States); " : "") + "score and snap: makers' pages; the rest common practice, no source"));
    }

    private static IEnumerable<Finding> Of(BoardProduct board, Tape tape, Region? region)
    {
        var (apart, inset) = (LimitTable.For(region, LimitKeys.BoardScrews), LimitTable.For(region, LimitKeys.BoardInset));
        if (board.ScrewsApart > apart.Most.Length) yield return Said(FindingLevel.Warn, board.Name, "Screws stand farther apart than is printed for walls and floors; on ceilings 6 in is printed.", $"at most {Say(apart.Most.Length)}", Say(board.ScrewsApart), apart.Source);
        if (board.Inset < inset.LeastOn(tape) || board.Inset >= inset.Most.Length) yield return Said(FindingLevel.Warn, board.Name, "The outer screws stand too near to the sheet's edge, which then breaks out, or too far from it.", $"{Say(inset.LeastOn(tape))} or more, under {Say(inset.Most.Length)}", Say(board.Inset), inset.Source);

        string Say(Length length) => Shown.Fine(length, tape);
    }

    private static IEnumerable<Finding> Limits(BoardedFace face, Tape tape, Region? region, bool isFloor)
    {
        var (board, studs) = (face.Product, face.Request.Studs);
        if (studs is not null)
        {
            var (thick, apart, joists) = (LimitTable.For(region, LimitKeys.BoardWall), LimitTable.For(region, LimitKeys.BoardStuds), LimitTable.For(region, LimitKeys.BoardJoists));
            if (board.Thickness > Length.Zero) yield return Judged(board.Thickness >= thick.LeastOn(tape), "On studs board is 1/2 in thick or more; thinner board is for floors and counters.", $"{Say(thick.LeastOn(tape))} or more on walls and ceilings", Say(board.Thickness), thick.Source);
            if (Widest(face) is { } widest && widest > Length.Zero)
            {
                yield return Judged(
                    widest <= apart.Most.Length, $"Studs under board stand {Say(widest)} from middle to middle at the most. On floors fibre cement is printed for joists up to {Say(joists.Most.Length)}, over a subfloor.", $"at most {Say(apart.Most.Length)}", Say(widest), apart.Source);
            }

            var half = Length.FromSteps((board.Gap.Steps + 1) / 2);
            if (half + board.Inset > Length.FromSteps(studs.Width.Steps / 2) && face.Seams.Any(seam => seam.OnStud))
            {
                yield return Said(
                    FindingLevel.Warn, face.Face, "Where two sheets meet on a stud, half the gap and the inset of the screws together are more than half the stud: the screws miss it. Nail a strip beside the studs that carry seams, or set the screws nearer to the edge as far as the board's maker allows.",
                    $"at most {Say(Length.FromSteps(studs.Width.Steps / 2))}", Say(half + board.Inset), Practice);
            }
        }

        // Board on a floor ends at walls, and stands on nothing that is wet.
        if (isFloor) yield break;
        var foot = LimitTable.For(region, LimitKeys.BoardFoot);
        yield return new(
            face.Request.Foot >= foot.LeastOn(tape) && face.Request.Foot <= foot.Most.Length ? FindingLevel.Note : FindingLevel.Warn, Rule, face.Face, "The gap under board, over a bath, a tray or a floor, keeps it from drawing water.", $"{Say(foot.LeastOn(tape))} to {Say(foot.Most.Length)} over baths and trays", Say(face.Request.Foot), foot.Source);

        string Say(Length length) => Shown.Fine(length, tape);

        Finding Judged(bool within, string text, string limit, string value, string source) => Said(within ? FindingLevel.Note : FindingLevel.Warn, face.Face, text, limit, value, source);
    }

    private static IEnumerable<Finding> Layout(BoardedFace face, Tape tape)
    {
        if (face.AtCorners > 0) yield return Said(FindingLevel.Warn, face.Face, $"{Times(face.AtCorners)} a seam comes within 2 in of a corner of an opening or of what stands at the face: a crack begins there. No row and no stud that was looked at keeps clear of all of them. Move a stud, or add one.", "none", Number(face.AtCorners), Practice);
        if (face.InLine > 0) yield return Said(FindingLevel.Warn, face.Face, $"{Times(face.InLine)} seams of two rows stand in line. In the rows tried, studs and sheets leave no other choice; another stud would.", "none", Number(face.InLine), Practice);
        if (face.Narrow > 0) yield return Said(FindingLevel.Note, face.Face, $"{Pieces(face.Narrow)} of board narrower than 4 in: easily broken, pre-drill.", "", Number(face.Narrow), Practice);
        if (face.Under > Length.Zero) yield return Said(FindingLevel.Note, face.Face, "Seams of board lie under joints of tile where water runs; in the rows tried, none that was better in what counts more keeps them apart. The tape and the membrane over them matter the more there.", "none where it can be had", Amounts.Distance((double)face.Under.Millimetres, tape), Practice);
        if (face.Niches.Count > 0) yield return Said(FindingLevel.Note, face.Face, $"Inside of {string.Join(", ", face.Niches.Select(niche => niche.Opening))} board and coats are counted. Its tile, mortar, grout and sealant are not: a face is flat, so give its back and its sides as faces of their own.", "", "", "docs/materials.md");
        foreach (var niche in face.Niches)
        {
            if (StudsIn(face, niche) is not { Count: > 0 } studs) continue;
            yield return Said(
                FindingLevel.Warn, face.Face, $"With its lining {niche.Opening} takes more room than there is between studs: one stands in it. Move the niche, make it narrower, or have the stud headed off; ask whoever knows the house first, for it may carry something, and wires may run along it.",
                $"{Shown.Fine(Framed(face, niche).Width, tape)} clear between studs", "a stud at " + string.Join(", ", studs.Select(stud => Shown.Fine(stud, tape))), Practice);
        }

        if (!face.IsBest) yield return Said(FindingLevel.Note, face.Face, "So many rows and studs were not gone through to the end: a better choice of seams may be there.", "", "", "docs/boards.md");
    }

    /// <summary>The studs that stand where a niche and the board round it go.</summary>
    private static List<Length>? StudsIn(BoardedFace face, NicheBoards niche)
    {
        if (face.Request.Studs is not { RunLevel: false } studs) return null;
        var (frame, half) = (Framed(face, niche), Length.FromSteps(studs.Width.Steps / 2));
        return [.. face.Studs.Where(stud => stud + half > frame.Left && stud - half < frame.Right)];
    }

    private static Box Framed(BoardedFace face, NicheBoards niche)
    {
        var (box, thick) = (face.Openings.First(opening => string.Equals(opening.Name, niche.Opening, StringComparison.Ordinal)).Ring.Bounds, face.Product.Thickness);
        return new(box.Left - thick, box.Bottom - thick, box.Right + thick, box.Top + thick);
    }

    /// <summary>The widest stretch between two studs, or from the last of them to nothing; none with a single stud.</summary>
    private static Length? Widest(BoardedFace face) => face.Studs.Count < 2 ? null : face.Studs.Zip(face.Studs.Skip(1), (one, next) => next - one).Max();

    private static string Times(int count) => count == 1 ? "Once" : $"{Number(count)} times";

    private static string Pieces(int count) => count == 1 ? "1 piece is" : $"{Number(count)} pieces are";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Finding Said(FindingLevel level, string where, string text, string limit, string value, string source) => new(level, Rule, where, text, limit, value, source);
}
