namespace Gaugerod.Engine.Lines;

/// <summary>
/// By how many steps limits are let out: legs up to it are taken for none, sizes asked for are less by it. Nothing for the
/// true score; more gives a score that is no worse than that of any placing so near.
/// </summary>
/// <param name="Side">For legs at edges that end courses.</param>
/// <param name="Level">For legs at edges that lie along courses.</param>
internal readonly record struct Relax(long Side, long Level)
{
    public bool Any => Side > 0 || Level > 0;

    public long Most => Math.Max(Side, Level);
}
