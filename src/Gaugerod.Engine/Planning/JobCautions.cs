using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>The cautions of a job.</summary>
internal static class JobCautions
{
    /// <summary>Those of all its tasks; of a job without a region what every plan says.</summary>
    public static Sequence<Finding> Of(Job job) => Cautions.Findings(Facts(job));

    /// <summary>Those of one task of <see cref="CautionTask"/>.</summary>
    public static Sequence<Finding> Of(Job job, string task) => Cautions.OfTask(task, Facts(job));

    private static CautionFacts Facts(Job job) => new(job.Region, job.Tape, job.Products)
    {
        Supplies = job.Supplies,
        Area = job.Region is null ? null : job.Faces.Select((face, i) => FaceDrawing.Draw(new(i, face), new(job.Tape))).OfType<DrawnFace>().Sum(face => Coating.Whole(face, null)),
    };
}
