using System.Globalization;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Lines;

/// <summary>Writes many tiles of a few outlines as path text at every frame: digits into a room that is kept, one string at the end.</summary>
internal sealed class CellInk
{
    private const int MostOfANumber = 20;

    private readonly string[] _rests;
    private char[] _room = new char[4096];
    private int _at;

    /// <summary>Readies the writing of some outlines, each with its first corner at the origin.</summary>
    public CellInk(IEnumerable<Ring> outlines) => _rests = [.. outlines.Select(outline => string.Concat(outline.Points.Zip(outline.Points.Skip(1), Step)) + "z")];

    /// <summary>The tiles as one path.</summary>
    /// <param name="corners">Three numbers each: the first corner on the face, x and y, in steps, and which outline.</param>
    /// <param name="left">Where the picture begins, on the face.</param>
    /// <param name="top">The picture's upper side, on the face.</param>
    public string Path(ReadOnlySpan<long> corners, Length left, Length top)
    {
        _at = 0;
        for (var i = 0; i < corners.Length; i += 3)
        {
            var rest = _rests[corners[i + 2]];
            if (_room.Length - _at < (2 * MostOfANumber) + rest.Length + 2) Array.Resize(ref _room, _room.Length * 2);
            _room[_at++] = 'M';
            Write(Ink.Units(Length.FromSteps(corners[i] - left.Steps)));
            _room[_at++] = ' ';
            Write(Ink.Units(Length.FromSteps(top.Steps - corners[i + 1])));
            rest.CopyTo(0, _room, _at, rest.Length);
            _at += rest.Length;
        }

        return new(_room, 0, _at);
    }

    private static string Step(Point from, Point to) =>
        string.Create(CultureInfo.InvariantCulture, $"l{Ink.Units(to.X) - Ink.Units(from.X)} {Ink.Units(from.Y) - Ink.Units(to.Y)}");

    private void Write(long number)
    {
        var rest = (int)number;
        if (rest < 0)
        {
            _room[_at++] = '-';
            rest = -rest;
        }

        var end = _at;
        for (var more = rest; more >= 10; more /= 10) end++;
        _at = end + 1;
        for (; end >= 0; end--)
        {
            _room[end] = (char)('0' + (rest % 10));
            rest /= 10;
            if (rest == 0) break;
        }
    }
}
