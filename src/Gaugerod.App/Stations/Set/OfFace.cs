using Gaugerod.App.Desk;
using Gaugerod.App.Stations.Measure;
using Gaugerod.Plane.Measure;
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
}
