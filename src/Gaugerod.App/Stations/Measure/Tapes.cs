using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The tape a length is written for, also while the job cannot be read yet.</summary>
internal static class Tapes
{
    public static Tape Of(JobDesk desk) =>
        desk.Job?.Tape is { } tape && tape.Unit == desk.Unit ? tape : desk.Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;
}
