using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>Where a survey puts the level line.</summary>
public static class SurveyedLine
{
    /// <summary>How high above the first corner it runs; null where nothing was read to it, or the readings cannot be used.</summary>
    public static Length? Height(FaceSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return survey.Readings.Any(r => r.First.At == survey.LevelLine || r.Second.At == survey.LevelLine)
            ? SurveyToOutline.Draw(survey, new("", "", Tape.Millimetres)).LevelLine
            : null;
    }
}
