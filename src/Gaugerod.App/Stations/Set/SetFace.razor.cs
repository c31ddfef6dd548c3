using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Set;

/// <summary>A face as it is set, course by course.</summary>
public sealed partial class SetFace : OfFace
{
    private static readonly string[] s_groups = ["courses", "from", "face"];

    /// <summary>What was said of a face before a further course was ticked off, for when that is taken back.</summary>
    [Parameter, EditorRequired]
    public IDictionary<string, string> Kept { get; set; } = null!;

    /// <summary>Whether it lies open at first.</summary>
    [Parameter]
    public bool Open { get; set; }

    /// <summary>What was entered and cannot be.</summary>
    [Parameter]
    public IReadOnlyList<string> Findings { get; set; } = [];

    /// <summary>The one piece that is looked at, by its number; empty for all of the face.</summary>
    [Parameter]
    public string Piece { get; set; } = "";

    /// <summary>Pictures of its cut pieces; needed where one piece is looked at.</summary>
    [Parameter]
    public PiecePictures? Pictures { get; set; }

    [Inject]
    internal Whereabouts Where { get; set; } = null!;

    private CourseToSet? Next => Of.Courses.FirstOrDefault(course => !Now.Holds(course.Number));

    /// <summary>What the plan last made of it, also where the job has moved on by a course or two.</summary>
    private AgainFace? Again => Desk.Plan?.Again.FirstOrDefault(face => string.Equals(face.Run, Of.Run.Request.Name, StringComparison.Ordinal) && string.Equals(face.Face, Of.Name, StringComparison.Ordinal));

    private string Aside => Now.Count == Of.Courses.Count ? "✓ all set" : string.Create(CultureInfo.InvariantCulture, $"{Now.Count} of {Of.Courses.Count} courses set");

    /// <summary>Where a course's lower side stands, by the best way where it was measured again. Below the starting line it is the top that is held.</summary>
    private string Stands(CourseToSet course)
    {
        if (course.Number < Of.Start) return "top at " + LengthText.Nearest(course.Top, Tape) + Over(course.Top);
        if (Again?.Ways[0].Marks.FirstOrDefault(mark => mark.Course == course.Number) is not { } mark) return "at " + LengthText.Nearest(course.Bottom, Tape) + Over(course.Bottom);
        var (left, right) = (LengthText.NearestBare(mark.Left, Tape), LengthText.NearestBare(mark.Right, Tape));
        var at = string.Equals(left, right, StringComparison.Ordinal) ? "at " + LengthText.Nearest(mark.Left, Tape) : $"at {left} left, {LengthText.Nearest(mark.Right, Tape)} right";
        var off = AgainWords.OffPlan(mark.Left - mark.Planned, Tape);
        var over = string.Equals(left, right, StringComparison.Ordinal) ? Over(mark.Left) : Of.Line is null ? "" : $"; {FromLine(mark.Left)} left, {FromLine(mark.Right)} right";
        return (off.Length == 0 ? at : $"{at} ({off})") + over;
    }

    private string Over(Length height) => FromLine(height) is { Length: > 0 } over ? ", " + over : "";

    private IReadOnlyList<MustHeight> Musts => MustHeight.Of(Of);

    private static string Pieces(CourseToSet course)
    {
        var cut = course.Cut.Select(piece => piece.Id).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{course.Pieces.Count} {(course.Pieces.Count == 1 ? "piece" : "pieces")}{(cut.Count > 0 ? ", cut: " + string.Join(", ", cut) : ", none cut")}");
    }

    // Short: every row of the list says the same.
    private string Said(CourseToSet course) => Now.Holds(course.Number) ? "✓ set" : Stands(course).Replace("starting line", "line", StringComparison.Ordinal);

    /// <summary>Ticks a course off, or takes it back.</summary>
    private void Turn(CourseToSet course)
    {
        if (Place is not { } place) return;
        var was = Now;
        if (was.Holds(course.Number)) TakeBack(place, was, was.Without(course.Number, Of.Start), course.Number);
        else TickOff(place, was, was.With(course.Number, Of.Start));
    }

    private void TickOff(string place, CoursesSet was, CoursesSet now)
    {
        if (JobPath.Get(Desk.Root, place) is { } entry) Kept[Key(was)] = entry.ToJsonString();
        var top = was.None || now.To == was.To ? null : SetTop.Read(Desk, place)?.After(Of, Again, was.To, now.To);
        Desk.Change($"{Words(was, now)} set", root =>
        {
            SetJob.Put(root, place, Of, now);
            if (top is { } stands) JobPath.Set(root, place + ".top", stands.Typed(Desk, Of.Course(now.To)));
            // What is set no longer waits to be set.
            var gone = Of.Courses.Where(of => now.Holds(of.Number) && !was.Holds(of.Number)).SelectMany(of => of.Pieces).Select(piece => piece.Id).ToHashSet(StringComparer.Ordinal);
            if (SetJob.Cut(root, place) is var cut && cut.Any(gone.Contains)) SetJob.PutCut(root, place, Of, cut.Where(piece => !gone.Contains(piece)));
        });
    }

    private void TakeBack(string place, CoursesSet was, CoursesSet now, int course)
    {
        var before = Kept.TryGetValue(Key(now), out var kept) ? JsonNode.Parse(kept) as JsonObject : null;
        Desk.Change($"{Name(course)} not set after all", root =>
        {
            SetJob.Put(root, place, Of, now);
            if (!now.None && now.To != was.To && SetTop.Read(Desk, place) is not null) JobPath.Set(root, place + ".top", before?["top"]?.DeepClone());
            var back = Of.Courses.Where(of => was.Holds(of.Number) && !now.Holds(of.Number)).SelectMany(of => of.Pieces).Select(piece => piece.Id).ToHashSet(StringComparer.Ordinal);
            var cut = SetJob.Cut(root, place);
            var again = (before?["cut"] as JsonArray ?? []).Select(piece => piece?.ToString() ?? "").Where(back.Contains).Except(cut, StringComparer.Ordinal).ToList();
            if (again.Count > 0) SetJob.PutCut(root, place, Of, cut.Concat(again));
        });
    }

    private string Words(CoursesSet was, CoursesSet now)
    {
        var fresh = Of.Courses.Select(of => of.Number).Where(number => now.Holds(number) && !was.Holds(number)).Order().ToList();
        return fresh.Count == 1 ? Name(fresh[0]) : string.Create(CultureInfo.InvariantCulture, $"courses {fresh[0]} to {fresh[^1]} of {Of.Name}");
    }

    private string Name(int course) => string.Create(CultureInfo.InvariantCulture, $"course {course} of {Of.Name}");

    private string Key(CoursesSet set) => string.Create(CultureInfo.InvariantCulture, $"{Desk.Id} {Of.Run.Request.Name} {Of.Name} {set.From} {set.To}");
}
