namespace Gaugerod.Engine.Takeoffs;

/// <summary>
/// The boxes that are open, and what is left in them. They are opened in groups of as many as are wanted open; what is left over goes with the
/// last group, so that none is ever opened alone at the end.
/// </summary>
internal sealed class OpenBoxes
{
    private readonly int _boxes, _perBox, _open;
    private int[] _left;
    private int _first;
    private int _next;

    public OpenBoxes(int boxes, int perBox, int open)
    {
        (_boxes, _perBox, _open, _first) = (boxes, perBox, open, 1);
        _left = Group();
    }

    private OpenBoxes(OpenBoxes other)
    {
        (_boxes, _perBox, _open) = (other._boxes, other._perBox, other._open);
        (_left, _first, _next) = ([.. other._left], other._first, other._next);
    }

    /// <summary>The open boxes with tiles in them, by their places, and how many each has left.</summary>
    public IEnumerable<(int Place, int Left)> Places()
    {
        OpenMore();
        return _left.Select((left, place) => (place, left)).Where(box => box.left > 0);
    }

    /// <summary>How many of those not yet opened are opened together.</summary>
    public static int Together(int unopened, int open) => unopened < 2 * open ? unopened : open;

    public OpenBoxes Copy() => new(this);

    /// <summary>The next tile is to come from the box at a place.</summary>
    public void BeginWith(int place) => _next = place;

    /// <summary>Takes a tile from the next box in turn that has one; gives the box's number.</summary>
    public int Take()
    {
        OpenMore();
        while (_left[_next] == 0) _next = (_next + 1) % _left.Length;
        var box = _first + _next;
        _left[_next]--;
        _next = (_next + 1) % _left.Length;
        return box;
    }

    private void OpenMore()
    {
        if (Array.Exists(_left, left => left > 0)) return;
        _first += _left.Length;
        _left = Group();
        _next = 0;
    }

    private int[] Group()
    {
        var unopened = _boxes - _first + 1;
        if (unopened <= 0) throw new InvalidOperationException("More tiles are taken than the boxes hold.");
        var group = new int[Together(unopened, _open)];
        Array.Fill(group, _perBox);
        return group;
    }
}
