namespace Gaugerod.Cli.Writing;

/// <summary>A file that is ready to be written.</summary>
/// <param name="Name">Its name in the folder, safe on every file system.</param>
/// <param name="Bytes">What is in it.</param>
internal sealed record OutputFile(string Name, ReadOnlyMemory<byte> Bytes);
