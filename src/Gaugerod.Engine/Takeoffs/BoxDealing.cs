using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>Gives every tile of a product a box, so that the tiles of one box are spread. The rules stand in docs/directions.md.</summary>
internal sealed class BoxDealing
{
    private readonly Dictionary<string, int> _tiles = new(StringComparer.Ordinal);
    private readonly ProductCutting _cutting;
    private readonly Dictionary<string, List<string>> _beside = new(StringComparer.Ordinal);
    private readonly int[] _box;
    private readonly Chance _chance;
    private readonly OpenBoxes _open;

    private BoxDealing(Product product, ProductCutting cutting, int boxes)
    {
        _cutting = cutting;
        for (var i = 0; i < cutting.Tiles.Count; i++)
        {
            foreach (var piece in cutting.Tiles[i].Pieces) _tiles[piece.Id] = i;
        }

        _box = new int[cutting.Tiles.Count];
        _chance = new(product.Name);
        _open = new(boxes, product.PerBox, product.Blend!.Value);
    }

    /// <summary>The boxes of a product's tiles.</summary>
    /// <param name="product">The product; it says how many boxes are open.</param>
    /// <param name="cutting">Which tile each of its pieces is cut from.</param>
    /// <param name="boxes">How many boxes are ordered; they hold all its tiles.</param>
    /// <param name="faces">The faces in setting order.</param>
    public static BoxPlan Of(Product product, ProductCutting cutting, int boxes, IEnumerable<SetFace> faces)
    {
        var dealing = new BoxDealing(product, cutting, boxes);
        var own = faces.Select(face => face with { Pieces = face.Pieces.Where(piece => string.Equals(piece.Product, product.Name, StringComparison.Ordinal)).ToSequence() }).ToList();
        var joints = own.SelectMany(face => Neighbours.Of(face.Pieces, face.Joint).Select(pair => (One: face.Pieces[pair.One].Id, Other: face.Pieces[pair.Other].Id))).ToList();
        foreach (var (one, other) in joints) dealing.Beside(one, other);
        var courses = own.SelectMany(face => face.Pieces.GroupBy(piece => piece.Course).OrderBy(course => course.Key).Select(dealing.Course)).ToSequence();
        return new(
            product.Name, Math.Min(product.Blend!.Value, boxes), boxes, product.PerBox, Sequence.Of<int>(dealing._box), courses,
            joints.Count, joints.Count(pair => dealing.BoxOf(pair.One) == dealing.BoxOf(pair.Other)));
    }

    private void Beside(string one, string other)
    {
        foreach (var (piece, neighbour) in new[] { (one, other), (other, one) })
        {
            if (!_beside.TryGetValue(piece, out var list)) _beside[piece] = list = [];
            list.Add(neighbour);
        }
    }

    private int BoxOf(string piece) => _box[_tiles[piece]];

    private BoxCourse Course(IGrouping<int, Piece> course)
    {
        var stretches = new List<List<Piece>>();
        foreach (var piece in course.OrderBy(piece => piece.Column).ThenBy(piece => piece.Cell.Left).ThenBy(piece => piece.Outline.Bounds.Bottom).ThenBy(piece => piece.Outline.Bounds.Left))
        {
            // Where a place of the course has no piece, an opening interrupts it. The places of a pattern are counted without gaps.
            if (stretches.Count == 0 || (piece.Frame is null && piece.Column - stretches[^1][^1].Column > 1)) stretches.Add([]);
            stretches[^1].Add(piece);
        }

        return new(stretches[0][0].Face, course.Key, stretches.Select(Stretch).ToSequence());
    }

    private Sequence<BoxedPiece> Stretch(List<Piece> stretch)
    {
        var fresh = stretch.Select(piece => piece.Id).Where(piece => BoxOf(piece) == 0).DistinctBy(piece => _tiles[piece]).ToList();
        if (fresh.Count > 0)
        {
            _open.BeginWith(Start(fresh));
            foreach (var piece in fresh) _box[_tiles[piece]] = _open.Take();
        }

        var taken = fresh.ToHashSet(StringComparer.Ordinal);
        return stretch.Select(piece => new BoxedPiece(piece.Id, BoxOf(piece.Id), !taken.Contains(piece.Id))).ToSequence();
    }

    /// <summary>The open box to begin a stretch with: tried out, and by chance where several do as well.</summary>
    private int Start(List<string> fresh)
    {
        var tries = _open.Places().Select(box => (box.Place, box.Left, Alike: Try(fresh, box.Place))).ToList();
        var least = tries.Min(box => box.Alike);
        tries.RemoveAll(box => box.Alike > least);

        // One tile more or less is no reason: always to take the fuller box would bring the same order on every course.
        var most = tries.Max(box => box.Left);
        tries.RemoveAll(box => box.Left < most - 1);
        return tries[(int)_chance.Below(tries.Count)].Place;
    }

    /// <summary>How many of the joints round fresh tiles would lie between tiles of one box, were the stretch begun with the box at a place.</summary>
    private int Try(List<string> fresh, int place)
    {
        var open = _open.Copy();
        open.BeginWith(place);
        foreach (var piece in fresh) _box[_tiles[piece]] = open.Take();
        var alike = fresh.SelectMany(piece => _cutting.Tiles[_tiles[piece]].Pieces)
            .Sum(piece => _beside.GetValueOrDefault(piece.Id, []).Count(other => _tiles[other] != _tiles[piece.Id] && BoxOf(other) == BoxOf(piece.Id)));
        foreach (var piece in fresh) _box[_tiles[piece]] = 0;
        return alike;
    }
}
