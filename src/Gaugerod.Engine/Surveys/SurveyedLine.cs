using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>Where a survey puts the level line.</summary>
public static class SurveyedLine
{
    /// <summary>How high above the first corner it runs; null where nothing was read to it, or the readings cannot be used.</summary>
    /// <param name="room">The surveys that are weighed together.</param>
    /// <param name="face">Which of them.</param>
    public static Length? Height(JoinedSurveys room, string face)
    {
        ArgumentNullException.ThrowIfNull(room);
        return IsRead(room, face) ? SurveyToOutline.Draw(room, new(face, "", Tape.Millimetres)).LevelLine : null;
    }

    /// <summary>Whether anything was read to it.</summary>
    /// <param name="room">The surveys that are weighed together.</param>
    /// <param name="face">Which of them.</param>
    public static bool IsRead(JoinedSurveys room, string face)
    {
        ArgumentNullException.ThrowIfNull(room);
        var survey = room.Faces[JoinedSurveys.IndexOf(room.Faces, face)].Survey;
        return survey.Readings.Any(r => r.First.At == survey.LevelLine || r.Second.At == survey.LevelLine);
    }
}
