using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>
/// Where the heights of one thing on a face count from: y = 0 beside the floor, or the struck level line, from which
/// a setter measures once the floor is gone. Below the line a height has a minus.
/// </summary>
/// <param name="Line">How high above y = 0 the line crosses the face; null when none was struck, or none could be read.</param>
/// <param name="Missing">Whether the face gives none; one that could not be read has been said already.</param>
internal sealed record HeightBase(Length? Line, bool Missing)
{
    /// <summary>Of a face that is known.</summary>
    public static HeightBase Of(Face face) => face.Shape switch
    {
        FaceShape.Read { Readings.LevelLine: { } line } => new(line.Left, Missing: false),
        FaceShape.Outline { LevelLine: var line } when line != Length.Zero => new(line, Missing: false),
        FaceShape.Surveyed { Room: { } room } => Of(room, face.Name),
        _ => new(null, Missing: true),
    };

    /// <summary>Of a face that was surveyed: where its readings put the line. Where they cannot be used they are refused for that, and heights are not blamed.</summary>
    public static HeightBase Of(JoinedSurveys room, string face) =>
        SurveyedLine.IsRead(room, face) ? new(SurveyedLine.Height(room, face) ?? Length.Zero, Missing: false) : new(null, Missing: true);

    /// <summary>What is added to the heights of a group; nothing where they count from y = 0. Null, and a fault, where there is no line to count from.</summary>
    public Length? Under(Fields fields)
    {
        if (!fields.Word("heightsFrom", Words.HeightBases, false)) return Length.Zero;
        if (Missing) fields.Values.Log.AddSaid(fields["heightsFrom"]!, "heights from the level line on a face without one", "the face's \"levelLine\" too", "read its height above the floor");
        return Line;
    }
}
