using Gaugerod.App.Desk;
using Gaugerod.App.Stations.Measure;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Set;

/// <summary>What is shown of a face as it is set: the face as planned, and what the job says is set of it.</summary>
public abstract class OfFace : ComponentBase
{
    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [CascadingParameter]
    internal FaceSet Of { get; set; } = null!;

    /// <summary>Where it stands in the job, or would; null where the job has no such run any more.</summary>
    private protected string? Place => SetJob.Place(Desk.Root, Of.Run.Request.Name, Of.Name);

    private protected CoursesSet Now => Place is { } place ? SetJob.Of(Desk.Root, place, Of) : Of.Nothing;

    private protected Tape Tape => Tapes.Of(Desk);

    /// <summary>A height as one measures it from the starting line: <c>203 mm above the starting line</c>; empty where no line is given.</summary>
    /// <param name="height">The height, above the face's lower left corner.</param>
    private protected string FromLine(Length height)
    {
        if (Of.Line is not { } line) return "";
        var off = height - line.At;
        return off.Abs() * 2 < Tape.Mark ? "on the starting line" : $"{LengthText.Nearest(off.Abs(), Tape)} {(off > Length.Zero ? "above" : "below")} the starting line";
    }

    /// <summary>What heights count from, and where the starting line stands by that.</summary>
    private protected string Zero => AgainWords.Heights + (Of.Line is { } line ? $" The starting line stands at {LengthText.Nearest(line.At, Tape)} by that." : "");
}
