using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What becomes of the rest of a face when what is set came out otherwise than planned.</summary>
/// <param name="Run">The run.</param>
/// <param name="Face">The face.</param>
/// <param name="Courses">The last course that is set, counted from the lowest of the run; one less than the face's first for none.</param>
/// <param name="OffLeft">How much higher than planned the last of them stands at the left.</param>
/// <param name="OffRight">The same at the right.</param>
/// <param name="Ways">Ways to go on, the least change that keeps most first; at least one.</param>
public sealed record AgainFace(string Run, string Face, int Courses, Length OffLeft, Length OffRight, Sequence<AgainWay> Ways)
{
    /// <summary>The first course that is set; those of the face below it are still to come.</summary>
    public int From { get; init; } = 1;

    /// <summary>Of the pieces cut already, what can be done with each, the first way followed.</summary>
    public Sequence<CutAlready> Cut { get; init; } = [];
}

/// <summary>One way to go on.</summary>
/// <param name="Words">What is done, in a sentence.</param>
/// <param name="Joint">The level joint it takes, where it is not as planned.</param>
/// <param name="BackAt">The first course that stands as planned again; null where none does.</param>
/// <param name="Marks">The courses still to be set, from the lowest.</param>
/// <param name="Pieces">The pieces still to be set, by the numbers they would have in a plan of their own.</param>
/// <param name="Changed">The numbers of those that are cut otherwise than planned.</param>
/// <param name="MustsMissed">How many musts it misses.</param>
/// <param name="WishesMissed">The weight of the wishes it misses.</param>
/// <param name="Missed">What it misses of what the plan held, in words.</param>
public sealed record AgainWay(
    string Words, Length Joint, int? BackAt, Sequence<AgainMark> Marks, Sequence<Piece> Pieces, Sequence<string> Changed, int MustsMissed, int WishesMissed, Sequence<string> Missed);

/// <summary>Where a course is to stand.</summary>
/// <param name="Course">The course.</param>
/// <param name="Planned">The height of its lower side as planned.</param>
/// <param name="Left">Its height now, at the face's left.</param>
/// <param name="Right">The same at its right.</param>
public sealed record AgainMark(int Course, Length Planned, Length Left, Length Right);

/// <summary>What can be done with a piece that is cut already.</summary>
/// <param name="Piece">Its number in the plan.</param>
/// <param name="Fits">Whether it goes where it was planned, as it is.</param>
/// <param name="Goes">The new piece it can be made into otherwise; null where it fits, and where it is of no more use.</param>
/// <param name="Words">The same in a sentence.</param>
public sealed record CutAlready(string Piece, bool Fits, string? Goes, string Words);

/// <summary>What is still needed of a product, and what is left of what was bought.</summary>
/// <param name="Product">The product.</param>
/// <param name="Needed">How many tiles the pieces still to be cut take, and those still to be set whole.</param>
/// <param name="Left">How many of the tiles bought are neither set nor cut; offcuts do not count.</param>
public sealed record AgainOrder(string Product, int Needed, int Left)
{
    /// <summary>How many are short.</summary>
    public int Short => Math.Max(0, Needed - Left);
}
