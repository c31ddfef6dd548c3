using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Trims;

/// <summary>What is to be said of a corner where two trims of one field do not agree, or a trim's end cannot be had as asked.</summary>
internal static class CornerRemarks
{
    /// <summary>What two strips say of their corner.</summary>
    public static void Say(TrimRemarks remarks, string face, FieldEdge one, TrimProduct first, FieldEdge next, TrimProduct second)
    {
        var (said, saidNext) = (one.Trimmed!.Left.Corner, next.Trimmed!.Right.Corner);
        var where = $"{face}, {one.Name} and {next.Name}";
        var corner = new Bend(one, next);
        if (corner.IsStraight) return;
        if (Disagreement(said, saidNext, one.Name, "the one that is not was followed") is { } text) remarks.Add(FindingLevel.Warn, "trim-corner", where, text);
        if (said is not (null or TrimCorner.Mitred or TrimCorner.Piece) || saidNext is not (null or TrimCorner.Mitred or TrimCorner.Piece)) return;
        var piece = StripCorner.Piece(corner, first, second);
        if (piece is not null && said != TrimCorner.Mitred && saidNext != TrimCorner.Mitred) return;
        if (said != TrimCorner.Mitred && saidNext != TrimCorner.Mitred && (said == TrimCorner.Piece || saidNext == TrimCorner.Piece))
        {
            remarks.Add(FindingLevel.Warn, "trim-corner", where, corner.IsSquare
                ? "A corner piece is asked for and none is to be had for this corner: the nearest that can be had is a mitre."
                : "A corner piece is made for a right angle and this corner is none: the nearest that can be had is a mitre.");
        }

        Mitre(remarks, where, corner, one, first, next, second);
    }

    /// <summary>What two strips say of the corner of two walls at which they end as <paramref name="end"/> says.</summary>
    public static void OfWalls(TrimRemarks remarks, Strip left, Strip right, TrimCorner? said, TrimCorner? saidNext, TrimEnd end)
    {
        // In an inner corner neither end shows: who covers whom is then no question.
        var text = end == TrimEnd.Hidden && said is TrimCorner.Covers or TrimCorner.Butts && said == saidNext ? null : Disagreement(said, saidNext, $"that of {left.Face.Face.Name}", "the mitre was followed");
        if (text is null && end != TrimEnd.CornerPiece && (said == TrimCorner.Piece || saidNext == TrimCorner.Piece))
        {
            text = end == TrimEnd.Mitre
                ? "A corner piece is asked for and none is to be had for this corner: the nearest that can be had is a mitre."
                : "A corner piece is asked for and none is to be had for this corner. It is left out; neither end shows there.";
        }

        if (text is not null) remarks.Add(FindingLevel.Warn, "trim-corner", $"{left.Face.Face.Name}, {left.Edge.Name} and {right.Face.Face.Name}, {right.Edge.Name}", text);
    }

    /// <summary>Two wishes that cannot both be had, with what was followed (<see cref="StripCorner"/>); null for none.</summary>
    private static string? Disagreement(TrimCorner? said, TrimCorner? saidNext, string one, string mitre) => (said, saidNext) switch
    {
        (null, _) or (_, null) => null,
        (TrimCorner.Covers, TrimCorner.Covers) => $"Both trims are to cover the other; {one} is taken to.",
        (TrimCorner.Butts, TrimCorner.Butts) => $"Both trims are to butt against the other; {one} is taken to cover.",
        (TrimCorner.Mitred, TrimCorner.Piece) or (TrimCorner.Piece, TrimCorner.Mitred) => "One of the two trims is to be mitred and the other to end at a corner piece; the mitre was followed.",
        (TrimCorner.Mitred, TrimCorner.Covers or TrimCorner.Butts) or (TrimCorner.Covers or TrimCorner.Butts, TrimCorner.Mitred) =>
            $"One of the two trims is to be mitred and the other is not; {mitre}.",
        (TrimCorner.Piece, TrimCorner.Covers or TrimCorner.Butts) or (TrimCorner.Covers or TrimCorner.Butts, TrimCorner.Piece) =>
            "One of the two trims is to end at a corner piece and the other is not; the one that is not was followed.",
        _ => null,
    };

    /// <summary>A return that finds another trim in its way.</summary>
    public static void Returns(TrimRemarks remarks, Strip strip)
    {
        foreach (var (asked, end, name) in new[] { (strip.Edge.Trimmed!.Right.Return, strip.Begin, "right"), (strip.Edge.Trimmed!.Left.Return, strip.End, "left") })
        {
            if (asked is null || end.Return > 0) continue;
            remarks.Add(
                FindingLevel.Warn, "trim-return", $"{strip.Face.Face.Name}, {strip.Edge.Name}",
                $"A return of {remarks.Say(asked.Value)} is asked for at the {name} end, which goes on along {end.Meets.Name}: nothing can turn there. It is left out; ask for it where the trim ends.");
        }
    }

    /// <summary>An end that leans further than a saw is set.</summary>
    public static void Leans(TrimRemarks remarks, Strip strip)
    {
        foreach (var (end, name) in new[] { (strip.Begin, "right"), (strip.End, "left") })
        {
            var angle = MitreAngle.Of(end with { Takes = end.Shortens }, strip.Product);
            if (end.End is not (TrimEnd.Hidden or TrimEnd.Butts) || angle <= MitreAngle.Most) continue;
            remarks.Add(
                FindingLevel.Warn, "trim-corner", $"{strip.Face.Face.Name}, {strip.Edge.Name}",
                $"The trim's {name} end would lean {MitreAngle.Say(angle)} off square against {end.Meets.Name}: no saw is set so far. Nearest: a trim of that width along {end.Meets.Name} too, or end it square at its short point.",
                $"{MitreAngle.Say(MitreAngle.Most)} off square", MitreAngle.Say(angle));
        }
    }

    /// <summary>A mitre that is not at half the angle, or that no saw makes.</summary>
    private static void Mitre(TrimRemarks remarks, string where, Bend corner, FieldEdge one, TrimProduct first, FieldEdge next, TrimProduct second)
    {
        var (mitre, mitreNext) = StripCorner.Mitres(corner, one, first, next, second);
        var (angle, angleNext) = (MitreAngle.Of(mitre, first), MitreAngle.Of(mitreNext, second));
        var saw = $"the saw would be set {MitreAngle.Say(angle)} off square for {one.Name} and {MitreAngle.Say(angleNext)} for {next.Name}";
        if (!MitreAngle.CanBeSawn(mitre, first, mitreNext, second))
        {
            var covers = first.Width >= second.Width ? one.Name : next.Name;
            remarks.Add(
                FindingLevel.Warn, "trim-corner", where, $"These trims cannot be mitred here: {saw}. The nearest that can be had: {covers} covers the other.",
                $"{MitreAngle.Say(MitreAngle.Most)} off square", MitreAngle.Say(Math.Max(angle, angleNext)));
        }
        else if (first.Width != second.Width)
        {
            remarks.Add(
                FindingLevel.Warn, "trim-corner", where,
                $"Trims {remarks.Say(first.Width)} and {remarks.Say(second.Width)} wide meet on a mitre, which runs corner to corner and not at half the angle: {saw.Replace("would be", "is", StringComparison.Ordinal)}. What is rounded of them does not run on; let the wider one cover if that shows.",
                $"{remarks.Say(first.Width)} both", remarks.Say(second.Width));
        }
    }
}
