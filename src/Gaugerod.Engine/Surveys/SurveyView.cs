using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Surveys;

/// <summary>Looks at a survey by itself, while it is being taken and there is no job yet to plan.</summary>
public static class SurveyView
{
    /// <summary>What its readings come to so far. Paths of faults begin with <c>.survey</c>.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="face">The name of what is being read.</param>
    /// <param name="tape">The tape it is read with.</param>
    public static SurveyedOutline Of(FaceSurvey survey, string face, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(face);
        ArgumentNullException.ThrowIfNull(tape);
        return SurveyToOutline.Draw(survey, new(face, "", tape));
    }
}
