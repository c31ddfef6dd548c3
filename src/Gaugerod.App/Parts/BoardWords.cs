namespace Gaugerod.App.Parts;

/// <summary>Says a place within what is said of a face's board: <c>middle of the first stud</c>.</summary>
internal static class BoardWords
{
    public static string Place(string rest) => rest switch
    {
        "of" => "board",
        "lay" => "lay of the sheets",
        "foot" => "gap under the board",
        "edges" => "gap beside the board",
        "wet" => "height of running water",
        "studs.from" => "middle of the first stud",
        "studs.spacing" => "spacing of the studs",
        "studs.width" => "width of a stud",
        "studs.run" => "way the studs run",
        _ when rest.StartsWith("studs.at[", StringComparison.Ordinal) => "middle of another stud",
        _ when rest.StartsWith("studs", StringComparison.Ordinal) => "studs",
        _ => "board",
    };
}
