using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Finds what keeps sheets from a face: studs off it, stretches no seam can part, more than a plan is made for.</summary>
internal static class BoardFaults
{
    /// <summary>So many sheets' worth of one face are planned only when asked for.</summary>
    private const int ManySheets = 200;

    private const string Unit = "look for a length in the wrong unit";

    public static void Find(BoardTask task, string path, bool large, Remarks remarks)
    {
        var before = remarks.Faults.Count;
        OffTheFace(task, path + ".studs", remarks);
        if (remarks.Faults.Count > before) return;
        var (bounds, shorter) = (task.Field.Bounds, task.Product.Width);
        var sheets = (double)bounds.Width.Steps * bounds.Height.Steps / ((double)shorter.Steps * task.Product.Length.Steps);
        var (rows, places) = (bounds.Height.Steps / shorter.Steps, task.Lays.Max(lay => task.Places(task.Sheet(lay)).Length));
        NicheMaker.Check(task, remarks);

        // Both the lowest row and the highest may be cut.
        if (rows + 2 > LastSeams.Most || places > LastSeams.MostPlaces) remarks.Refuse(path, Said($"{rows + 2} rows, and seams at {places} places"), Said($"at most {LastSeams.Most} rows and {LastSeams.MostPlaces} places"), Unit);
        else if (sheets > ManySheets && !large) remarks.Refuse(path + ".of", Said($"about {sheets:0} sheets"), Said($"at most {ManySheets} sheets on a face, unless a large job is asked for (--large)"), Unit);
        else if (task.TooWide() is var (from, width)) TooWide(task, path + ".studs", (from, width), remarks);
    }

    private static void OffTheFace(BoardTask task, string path, Remarks remarks)
    {
        if (task.Request.Studs is not { } studs) return;
        var (left, right) = (task.Field.Bounds.Left, task.Field.Bounds.Right);
        for (var i = 0; i < studs.At.Count; i++)
        {
            if (studs.At[i] > left && studs.At[i] < right) continue;
            Off(Said($"{path}.at[{i}]"), studs.At[i]);
        }

        if (studs is { From: { } first, Apart: { } apart } && (first >= right || first + apart < left)) Off(path + ".from", first);

        void Off(string at, Length stud) => remarks.Refuse(
            at, LengthText.Finer(stud, remarks.Tape), $"the middle of a stud between {remarks.Say(left)} and {remarks.Say(right)}, where this face's board begins and ends",
            remarks.Say(stud <= left ? remarks.Tape.Down(left) + remarks.Tape.Mark : remarks.Tape.Down(right - remarks.Tape.Mark)));
    }

    private static void TooWide(BoardTask task, string path, (Length From, Length Width) stretch, Remarks remarks)
    {
        var sheet = task.Lays.Max(lay => task.Sheet(lay).Across);
        var most = LengthText.Down(Length.FromSteps(sheet), remarks.Tape);
        remarks.Refuse(
            path, $"{remarks.Say(stretch.Width)} from {remarks.Say(stretch.From)} on without a stud", $"studs no farther apart than a sheet reaches across them, {most}: every seam stands on one",
            Said($"a stud between, or sheets longer than {remarks.Say(stretch.Width)}"));
    }

    private static string Said(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
