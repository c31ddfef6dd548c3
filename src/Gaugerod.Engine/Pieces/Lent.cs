using System.Buffers;
using System.Runtime.CompilerServices;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// A list whose room is lent and given back. What a hall's pieces are sorted with is so large that the heap would be
/// tidied as a whole for it again and again.
/// </summary>
/// <param name="about">About how many items it will hold.</param>
internal sealed class Lent<T>(int about) : IDisposable
{
    private T[] _items = ArrayPool<T>.Shared.Rent(Math.Max(about, 16));

    public int Count { get; private set; }

    public Span<T> Items => _items.AsSpan(0, Count);

    public ref T this[int index] => ref _items[index];

    /// <summary>A list of so many items, whatever they are.</summary>
    public static Lent<T> Of(int count) => new(count) { Count = count };

    public void Add(in T item)
    {
        if (Count == _items.Length)
        {
            var larger = ArrayPool<T>.Shared.Rent(2 * Count);
            Items.CopyTo(larger);
            Dispose();
            _items = larger;
        }

        _items[Count++] = item;
    }

    public void Dispose()
    {
        ArrayPool<T>.Shared.Return(_items, RuntimeHelpers.IsReferenceOrContainsReferences<T>());
        _items = [];
    }
}
