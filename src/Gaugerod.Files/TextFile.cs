using Gaugerod.Files.Json;

namespace Gaugerod.Files;

/// <summary>A text file as bytes: UTF-8, with or without its mark, at most 8 MB.</summary>
public static class TextFile
{
    /// <summary>Its text; or why it is none.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <param name="name">What it is called in messages.</param>
    /// <param name="what">What it should hold, such as <c>a price list</c>.</param>
    public static (string Text, FileFault? Fault) Read(ReadOnlyMemory<byte> file, string name, string what)
    {
        var log = EncodingCheck.Open(file, name, what);
        return log.Any ? ("", log.Faults[0]) : (System.Text.Encoding.UTF8.GetString(log.Source.Bytes), null);
    }
}
