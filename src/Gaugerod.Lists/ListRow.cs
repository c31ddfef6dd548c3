namespace Gaugerod.Lists;

/// <summary>A row of a list: what stands between its separators, without quotes.</summary>
/// <param name="First">Its line in the file, counted from 1.</param>
/// <param name="Last">The last of its lines, where a quoted field goes on over several.</param>
/// <param name="Cells">What stands in it.</param>
internal readonly record struct ListRow(int First, int Last, string[] Cells)
{
    /// <summary>Whether nothing stands in it.</summary>
    public bool IsEmpty => Array.TrueForAll(Cells, string.IsNullOrWhiteSpace);
}
