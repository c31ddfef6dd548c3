using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// A run under the hand: what it comes to wherever its rods stand, quick enough to be asked at every frame. A place of the
/// rods is one <see cref="Placing"/> for each face, in the face's own coordinates, as <see cref="Proposal.Faces"/> has them.
/// One instance serves one thread.
/// </summary>
public abstract class RodSlide
{
    private protected RodSlide()
    {
    }

    /// <summary>Readies a run.</summary>
    /// <param name="job">The job.</param>
    /// <param name="run">A run of its plan.</param>
    public static RodSlide Of(Job job, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(run);
        if (run.IsBorder) return BorderSlide.Make(job, run);
        return JobRuns.IsStraight(run.Request, run.Finished) ? CourseSlide.Make(job, run) : PatternSlide.Make(job, run);
    }

    /// <summary>Readies a run with its bond turned another way about where it stands, and that run, with no piece on it yet.</summary>
    /// <param name="job">The job.</param>
    /// <param name="run">The run.</param>
    /// <param name="place">Where its rods stand.</param>
    /// <param name="turn">How the bond is turned.</param>
    public static (RodSlide Slide, RunPlan Run) Turned(Job job, RunPlan run, Sequence<Placing> place, Angle turn)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(place);
        var stands = place.Select(at => at with { Turn = turn }).ToSequence();
        var turned = run with
        {
            Request = run.Request with { Bond = run.Request.Bond with { Turn = turn } },
            Best = run.Best with { Faces = stands, Why = "Here the bond stands now." },
            Proof = run.Proof with { Kind = ProofKind.None, Words = "Worked out anew when the hand rests." },
            Alternatives = [],
            Lines = [],
            Rods = [],
            Turned = [],
            Faces = run.Faces.Select(face => face with { Pieces = [] }).ToSequence(),
        };
        return (Of(job, turned), turned);
    }

    /// <summary>The faces, left to right.</summary>
    public abstract Sequence<FinishedFace> Faces { get; }

    /// <summary>Whether the bottom rod moves one face alone: each has an x of its own.</summary>
    public abstract bool Restart { get; }

    /// <summary>The outlines of the bond's tiles on the faces, each moved so that its first corner lies at the origin.</summary>
    public abstract Sequence<Ring> Tiles { get; }

    /// <summary>How far a rod moves before everything comes round again.</summary>
    /// <param name="rod">Level: the rod along the bottom, which moves the tiling left and right. Plumb: the one that moves it up and down.</param>
    public abstract Length Repeat(Axis rod);

    /// <summary>From one mark of a rod to the next: a tile and its joint.</summary>
    public abstract Length Pitch(Axis rod);

    /// <summary>The place with a rod moved on.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="by">How far: right or up; left or down below zero.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    public Sequence<Placing> Moved(Sequence<Placing> place, Axis rod, Length by, int face)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Select((at, f) => rod == Axis.Plumb ? at with { Y = at.Y + by } : !Restart || f == face ? at with { X = at.X + by } : at).ToSequence();
    }

    /// <summary>What the run comes to at a place.</summary>
    public abstract SlideFigures At(Sequence<Placing> place);

    /// <summary>The smallest cut with a rod moved on by some distances from a place: a piece of the rod's curve.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    /// <param name="first">The first distance.</param>
    /// <param name="step">From one distance to the next.</param>
    /// <param name="smallest">Takes the smallest cuts; its length says how many.</param>
    public void Curve(Sequence<Placing> place, Axis rod, int face, Length first, Length step, Span<Length> smallest)
    {
        for (var i = 0; i < smallest.Length; i++) smallest[i] = Smallest(Moved(place, rod, first + (step * i), face));
    }

    /// <summary>Climbs from a distance to the top of the curve near it.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    /// <param name="near">A distance from the place.</param>
    /// <param name="step">How far from there the top may be.</param>
    /// <returns>The distance of the top, and the smallest cut there.</returns>
    public (Length By, Length Smallest) Peak(Sequence<Placing> place, Axis rod, int face, Length near, Length step)
    {
        var best = (By: near, Smallest: Smallest(Moved(place, rod, near, face)));
        for (; step > Length.Zero; step = Length.FromSteps(step.Steps / 2))
        {
            foreach (var by in new[] { best.By + step, best.By - step })
            {
                var smallest = Smallest(Moved(place, rod, by, face));
                if (smallest > best.Smallest) best = (by, smallest);
            }
        }

        return best;
    }

    /// <summary>How far a rod moves on from a place, within one repeat, to hold a want to the step; none where no want asks for a line that way.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    public abstract Sequence<Length> ToWants(Sequence<Placing> place, Axis rod, int face);

    /// <summary>Every tile of a face that its field may show while the tiling is drawn moved by up to one <see cref="Shift"/>.</summary>
    /// <param name="place">The place.</param>
    /// <param name="face">The face's place on the run.</param>
    public abstract IEnumerable<Ring> Lattice(Sequence<Placing> place, int face);

    /// <summary>How far a drawn lattice moves, right and up, less than a repeat of the bond each way, to show another place.</summary>
    /// <param name="drawn">The place it is drawn for.</param>
    /// <param name="place">The place to show.</param>
    /// <param name="face">The face's place on the run.</param>
    public abstract (Length Right, Length Up) Shift(Sequence<Placing> drawn, Sequence<Placing> place, int face);

    /// <summary>The cut tiles of a face, by kind.</summary>
    /// <param name="place">The place.</param>
    /// <param name="face">The face's place on the run.</param>
    /// <param name="cells">Takes the tiles in place of what it had.</param>
    public abstract void Cut(Sequence<Placing> place, int face, CutCells cells);

    /// <summary>The place as a job keeps it.</summary>
    public abstract HeldPlace Held(Sequence<Placing> place);

    /// <summary>The smallest cut at a place.</summary>
    private protected abstract Length Smallest(Sequence<Placing> place);
}
