using Gaugerod.Plane;

namespace Gaugerod.Sheets.Drawings;

/// <summary>What stands in one place of a table.</summary>
/// <param name="Text">It, as it is written.</param>
/// <param name="IsNumber">Whether it is a number of ours, and no words that somebody typed.</param>
public readonly record struct DataCell(string Text, bool IsNumber);

/// <summary>A table for other programs.</summary>
/// <param name="Head">The columns' names.</param>
/// <param name="Rows">The rows, each with a cell for every column.</param>
public sealed record DataTable(Sequence<string> Head, Sequence<Sequence<DataCell>> Rows);
