using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Boards;

/// <summary>A face to be boarded: what board covers of it, and where seams may stand.</summary>
internal sealed class BoardTask
{
    private BoardTask(DrawnFace face, BoardProduct product, BoardField field) => (Face, Product, Field) = (face, product, field);

    public DrawnFace Face { get; }

    public BoardProduct Product { get; }

    public BoardField Field { get; }

    public BoardRequest Request => Face.Face.Board!;

    /// <summary>The middles of the studs, rising; none on a floor.</summary>
    public long[] Middles => [.. (Request.Studs?.Between(Field.Bounds.Left, Field.Bounds.Right) ?? []).Select(at => at.Steps)];

    /// <summary>The ways the sheets may lie, in the order they are tried.</summary>
    public IEnumerable<BoardLay> Lays => Request.Lay == BoardLay.Either ? [BoardLay.Across, BoardLay.Along] : [Request.Lay];

    /// <summary>The task; null, with what stands in its way among the remarks.</summary>
    /// <param name="face">The face; it asks for a board.</param>
    /// <param name="product">The board.</param>
    /// <param name="remarks">Takes what cannot be.</param>
    public static BoardTask? Of(DrawnFace face, BoardProduct product, Remarks remarks) =>
        BoardField.Of(face, face.Face.Board!, remarks) is { } field ? new(face, product, field) : null;

    public SheetLies Sheet(BoardLay lay) => lay == BoardLay.Across
        ? new(Product.Length.Steps, Product.Width.Steps, Product.Gap.Steps)
        : new(Product.Width.Steps, Product.Length.Steps, Product.Gap.Steps);

    /// <summary>Where seams may stand, between a place left of everything and one right of it.</summary>
    public long[] Places(SheetLies sheet)
    {
        var (left, right) = (Field.Bounds.Left.Steps - 1, Field.Bounds.Right.Steps + 1);
        return [left, .. Request.Studs is null ? OnFloor(sheet) : Middles, right];
    }

    /// <summary>
    /// A floor carries a seam anywhere: whole sheets are laid from the left or the right, the first of them whole or half. Any other choice
    /// can be pushed to one side until every sheet but the last is whole or begins so; that it then stays as good in all else is not said.
    /// </summary>
    private IEnumerable<long> OnFloor(SheetLies sheet)
    {
        var (left, right, step) = (Field.Bounds.Left.Steps, Field.Bounds.Right.Steps, sheet.Across + sheet.Gap);
        var places = new SortedSet<long>();
        foreach (var first in new[] { sheet.Across, sheet.Across / 2 })
        {
            for (var end = first; end < right - left; end += step)
            {
                places.Add(left + end + sheet.Before);
                places.Add(right - end - sheet.After);
            }
        }

        return places.Where(at => at > left + sheet.Gap && at < right - sheet.Gap);
    }

    /// <summary>The width of the first stretch that no seam can part and no sheet covers, lying either way, and where it begins; null where all can be boarded.</summary>
    public (Length From, Length Width)? TooWide()
    {
        (Length, Length)? found = null;
        foreach (var lay in Lays)
        {
            var sheet = Sheet(lay);
            var at = Places(sheet);
            var rows = RowHeights.Of(Field.Bounds.Bottom.Steps, Field.Bounds.Top.Steps, sheet, []).First();
            var wide = rows.Select(band => new SheetRow(Field, band, sheet, at)).SelectMany(row => Enumerable.Range(0, at.Length - 1).Where(i => !row.Between(i, i + 1).Fits)).Select(i => (int?)i).FirstOrDefault();
            if (wide is not { } bay) return null;
            found ??= (Length.FromSteps(at[bay]), Length.FromSteps(at[bay + 1] - at[bay]));
        }

        return found;
    }
}
