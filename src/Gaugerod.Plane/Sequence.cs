using System.Collections;
using System.Runtime.CompilerServices;

namespace Gaugerod.Plane;

/// <summary>
/// A fixed list that is equal to another when their items are equal in order, so that records which hold lists
/// compare by value. Immutable; safe to share between threads when its items are.
/// </summary>
/// <typeparam name="T">What the list holds.</typeparam>
[CollectionBuilder(typeof(Sequence), nameof(Sequence.Of))]
public sealed class Sequence<T> : IReadOnlyList<T>, IEquatable<Sequence<T>>
{
    private readonly T[] _items;

    internal Sequence(T[] trusted) => _items = trusted;

    /// <summary>The list with nothing in it.</summary>
    public static Sequence<T> Empty { get; } = new([]);

    /// <summary>How many items there are.</summary>
    public int Count => _items.Length;

    /// <summary>The item at a place, counted from zero.</summary>
    public T this[int index] => _items[index];

    /// <summary>The items as a span, for loops that must be quick.</summary>
    public ReadOnlySpan<T> AsSpan() => _items;

    /// <inheritdoc />
    public bool Equals(Sequence<T>? other) => other is not null && _items.AsSpan().SequenceEqual(other._items);

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as Sequence<T>);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc />
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _items.GetEnumerator();
}

/// <summary>Makes sequences.</summary>
public static class Sequence
{
    /// <summary>A sequence of the items given; they are copied.</summary>
    public static Sequence<T> Of<T>(ReadOnlySpan<T> items) => items.Length == 0 ? Sequence<T>.Empty : new(items.ToArray());

    /// <summary>A sequence of so many items, each made from its place and from what all are made of; one list is made and no more.</summary>
    /// <param name="count">How many.</param>
    /// <param name="from">What all are made of.</param>
    /// <param name="make">Makes the item at a place, counted from zero.</param>
    public static Sequence<T> Make<T, TFrom>(int count, TFrom from, Func<TFrom, int, T> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        if (count == 0) return Sequence<T>.Empty;
        var items = new T[count];
        for (var i = 0; i < count; i++) items[i] = make(from, i);
        return new(items);
    }

    /// <summary>A sequence of what an enumeration gives, read once.</summary>
    public static Sequence<T> ToSequence<T>(this IEnumerable<T> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return items as Sequence<T> ?? new([.. items]);
    }
}
