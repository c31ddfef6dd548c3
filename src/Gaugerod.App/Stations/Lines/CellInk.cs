using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Lines;

/// <summary>Writes many boxes of one size as path text at every frame: digits into a room that is kept, one string at the end.</summary>
internal sealed class CellInk
{
    private const int MostOfANumber = 20;

    private readonly string _rest;
    private char[] _room = new char[4096];
    private int _at;

    /// <summary>Readies the writing of one size of box.</summary>
    public CellInk(Length width, Length height)
    {
        var (w, h) = (Ink.Units(width), Ink.Units(height));
        _rest = string.Create(CultureInfo.InvariantCulture, $"h{w}v{h}h{-w}z");
    }

    /// <summary>The boxes as one path.</summary>
    /// <param name="corners">Their lower left corners on the face, x and y in turn, in steps.</param>
    /// <param name="left">Where the picture begins, on the face.</param>
    /// <param name="top">Where the boxes' upper sides are measured from: the picture's upper side less a box's height.</param>
    public string Path(ReadOnlySpan<long> corners, Length left, Length top)
    {
        _at = 0;
        for (var i = 0; i < corners.Length; i += 2)
        {
            if (_room.Length - _at < (2 * MostOfANumber) + _rest.Length + 2) Array.Resize(ref _room, _room.Length * 2);
            _room[_at++] = 'M';
            Write(Ink.Units(Length.FromSteps(corners[i] - left.Steps)));
            _room[_at++] = ' ';
            Write(Ink.Units(Length.FromSteps(top.Steps - corners[i + 1])));
            _rest.CopyTo(0, _room, _at, _rest.Length);
            _at += _rest.Length;
        }

        return new(_room, 0, _at);
    }

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
