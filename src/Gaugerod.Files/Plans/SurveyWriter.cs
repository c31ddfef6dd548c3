using System.Text.Json;
using Gaugerod.Engine.Surveys;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what became of the readings of a surveyed face.</summary>
internal static class SurveyWriter
{
    public static void Write(Utf8JsonWriter json, WeighedSurvey survey)
    {
        json.WriteStartObject();
        json.WriteString("face", survey.Face);
        json.WriteNames("with", survey.With);
        json.WriteNumber("beyond", survey.Beyond);
        json.WriteList("corners", survey.Corners, corner => Write(json, corner));
        json.WriteList("sides", survey.Sides, side => Write(json, side));
        json.WriteList("readings", survey.Readings, reading => Write(json, reading));
        json.WriteNames("assumed", survey.Assumed);
        json.WriteList("suspects", survey.Suspects, suspect => json.WriteNumberValue(suspect));
        json.WriteNames("elsewhere", survey.Elsewhere);
        json.WriteString("next", survey.Next);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, PlacedSpot corner)
    {
        json.WriteStartObject();
        json.WriteString("name", corner.Name);
        json.WritePoint("at", corner.Place);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SureLength side)
    {
        json.WriteStartObject();
        json.WriteString("of", side.Said);
        json.WriteLength("value", side.Value);
        json.WriteLength("deviation", side.Deviation);
        json.WriteEndObject();
    }

    // Shares are told to what any machine reckons alike.
    private static void Write(Utf8JsonWriter json, WeighedReading reading)
    {
        json.WriteStartObject();
        json.WriteString("of", reading.Said);
        json.WriteLength("read", reading.Read);
        json.WriteLength("adjusted", reading.Adjusted);
        json.WriteLength("deviation", reading.Deviation);
        json.WriteNumber("redundancy", Math.Round(reading.Redundancy, 4));
        json.WriteNumber("standardised", Math.Round(reading.Standardised, 3));
        json.WriteLength("byOthers", reading.ByOthers);
        json.WriteEndObject();
    }
}
