using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>A reading in the drawing.</summary>
/// <param name="line">Its line, as a path.</param>
/// <param name="style">How it is drawn: <c>read</c>, <c>doubt</c>, <c>bare</c> (nothing checks it), <c>open</c> (not read yet), <c>asked</c>, <c>corner</c>.</param>
/// <param name="figure">What stands beside it; empty for nothing.</param>
/// <param name="others">What it would be by the others, where it is in question; else empty.</param>
/// <param name="x">Where the figure stands.</param>
/// <param name="y">The same, downwards.</param>
/// <param name="leads">The id of the field it leads to; empty for none.</param>
internal readonly struct DrawnReading(string line, string style, string figure, string others, double x, double y, string leads)
{
    public string Line => line;

    public string Style => style;

    public string Figure => figure;

    public string Others => others;

    public double X => x;

    public double Y => y;

    public string Field => leads;
}

/// <summary>Draws what was read corner to corner into the drawing of its face: every reading a line with its figure, and what it is worth.</summary>
internal static class SurveyDrawing
{
    /// <summary>What is drawn, in the drawing's own measure.</summary>
    /// <param name="desk">The job.</param>
    /// <param name="face">Where the face stands in it.</param>
    /// <param name="look">Its survey.</param>
    /// <param name="drains">Where the face falls to.</param>
    /// <param name="x">Where a place stands in the drawing.</param>
    /// <param name="y">The same, downwards.</param>
    /// <param name="wide">How wide the drawing is.</param>
    /// <param name="high">How high.</param>
    public static IReadOnlyList<DrawnReading> Of(JobDesk desk, string face, SurveyLook look, IReadOnlyList<SketchDrain> drains, Func<Spot, double> x, Func<Spot, double> y, double wide, double high)
    {
        if (look.Places.Count == 0) return [];
        var (drawn, lines, room) = (new List<DrawnReading>(), new ReadingLines(look, x, y), new FigureRoom(wide, high));
        foreach (var (name, at) in lines.Names())
        {
            room.Take(at.X, at.Y, (name.Length * 9) + 5, 16);
            drawn.Add(new("", "corner", name, "", at.X, at.Y, ""));
        }

        // No figure stands on a drain, nor where strings or diagonals cross: it would lie on two lines.
        foreach (var drain in drains) room.Take((x(drain.From) + x(drain.To)) / 2, (y(drain.From) + y(drain.To)) / 2, Math.Abs(x(drain.From) - x(drain.To)) + 16, Math.Abs(y(drain.From) - y(drain.To)) + 16);
        foreach (var at in lines.Crossings()) room.Take(at.X, at.Y, 6, 6);
        var tape = Tapes.Of(desk);
        // What is along a side has its place beside it; the rest looks for room between.
        var all = look.Survey.Readings.Select((reading, i) => (Row: look.Rows[i], Reading: reading)).OrderBy(one => lines.IsSide(one.Reading) ? 0 : 1);
        foreach (var (row, reading) in all)
        {
            var field = FormattableString.Invariant($"{face}.survey.readings[{row}].is");
            var (weighed, doubted) = (look.Weighed(row), look.IsDoubted(row));
            var figure = (doubted ? "▲ " : "") + Short(FieldId.Text(desk, field));
            var others = doubted && weighed?.ByOthers is { } by ? $"({LengthText.NearestBare(by, tape)})" : "";
            var style = doubted ? "doubt" : weighed is { Redundancy: < SurveyTable.Least } ? "bare" : "read";
            var at = lines.Beside(reading, room, Math.Max(figure.Length, others.Length) * (doubted ? 1.2 : 1), others.Length > 0 ? 2 : 1);
            drawn.Add(new(lines.Path(reading), style, figure, others, at.X, at.Y, FieldId.Of(field)));
        }

        // A side that is called otherwise than by its corners is named inside: outside stand the figures.
        for (var i = 0; i < look.Survey.Corners.Count; i++)
        {
            var (side, next) = (FormattableString.Invariant($"{face}.edges[{i}]"), (i + 1) % look.Survey.Corners.Count);
            var name = FieldId.Text(desk, side + ".name");
            if (name.Length == 0 || string.Equals(name, look.Survey.Corners[i].Name + look.Survey.Corners[next].Name, StringComparison.Ordinal)) continue;
            var at = lines.Inside(i, next, room, name.Length);
            drawn.Add(new("", "side", name, "", at.X, at.Y, FieldId.Of(side + ".kind")));
        }

        foreach (var (row, reading) in look.Open)
        {
            drawn.Add(new(lines.Path(reading), "open", "", "", 0, 0, FieldId.Of(FormattableString.Invariant($"{face}.survey.readings[{row}].is"))));
        }

        foreach (var drain in drains.Where(one => one.Name.Length > 0))
        {
            var (across, mx, my) = (drain.Name.Length * 8.2, (x(drain.From) + x(drain.To)) / 2, (y(drain.From) + y(drain.To)) / 2);
            var at = room.Place([(mx, my + 17), (mx, my - 17), (mx + 13 + (across / 2), my), (mx - 13 - (across / 2), my)], across, 16);
            drawn.Add(new("", "side", drain.Name, "", at.X, at.Y, ""));
        }

        if (look.Shape.Weighed?.Asked is { } asked)
        {
            var at = lines.Beside(asked, room, 4, 1);
            drawn.Add(new(lines.Path(asked), "asked", "next", "", at.X, at.Y, ""));
        }

        return drawn;
    }

    /// <summary>What the drawing's lines mean, as far as it has them.</summary>
    public static string Key(SurveyLook look)
    {
        var parts = new List<string> { look.Shape.Weighed is null ? "Rough: every corner square, and a metre where nothing is read yet." : "The shape as the readings are weighed." };
        if (look.Shape.Weighed is { } weighed)
        {
            if (weighed.Suspects.Count > 0) parts.Add("Heavy, dashed, ▲: in question; in brackets what it would be by the others.");
            if (weighed.Readings.Any(reading => reading.Redundancy < SurveyTable.Least)) parts.Add("Dotted: nothing checks it.");
            if (weighed.Asked is not null) parts.Add("Long blue dashes: to be read next.");
        }

        if (SurveyWeighed.With(look) is { Length: > 0 } with) parts.Add(with);
        if (look.Open.Count > 0) parts.Add("Faint: still to be read.");
        return string.Join(' ', parts);
    }

    private static string Short(string reading) => reading.Length > 12 ? reading[..11] + "…" : reading;
}
