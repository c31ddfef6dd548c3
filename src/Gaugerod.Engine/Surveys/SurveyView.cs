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

    /// <summary>As <see cref="Of(FaceSurvey, string, Tape)"/>, weighed with the faces that share sides with it.</summary>
    /// <param name="room">The surveys, its own among them.</param>
    /// <param name="face">The name of what is being read.</param>
    /// <param name="tape">The tape it is read with.</param>
    /// <exception cref="ArgumentException">No survey among them is of that face.</exception>
    public static SurveyedOutline Of(JoinedSurveys room, string face, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(face);
        ArgumentNullException.ThrowIfNull(tape);
        if (JoinedSurveys.IndexOf(room.Faces, face) < 0) throw new ArgumentException("No such face is among those surveyed.", nameof(face));
        return SurveyToOutline.Draw(room, new(face, "", tape));
    }
}
