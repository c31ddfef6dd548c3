using System.Diagnostics;
using System.Globalization;

namespace Gaugerod.Sheets.Tests.Formats;

/// <summary>Runs the independent readers: poppler, qpdf, librsvg. A test that needs one fails where it is missing.</summary>
internal static class Tool
{
    public static (int Exit, string Output) Run(string name, params string[] arguments)
    {
        var start = new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{name} did not start.");
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }

    /// <summary>A picture in 256 greys, read from the portable grey map format.</summary>
    public sealed record Grey(int Width, int Height, byte[] Pixels)
    {
        public bool Dark(int x, int y) => Pixels[(y * Width) + x] < 128;

        /// <summary>How many pixels lie from the first dark one of a row to the last, between two columns.</summary>
        public int DarkSpan(int y, int from, int to)
        {
            var dark = Enumerable.Range(from, to - from).Where(x => Dark(x, y)).ToArray();
            return dark.Length == 0 ? 0 : dark[^1] - dark[0] + 1;
        }

        public static Grey Read(string path)
        {
            var bytes = File.ReadAllBytes(path);
            var (fields, at) = (new List<string>(), 0);
            while (fields.Count < 4)
            {
                var start = at;
                while (!char.IsWhiteSpace((char)bytes[at])) at++;
                fields.Add(System.Text.Encoding.ASCII.GetString(bytes, start, at - start));
                at++;
            }

            Assert.Equal("P5", fields[0]);
            var (width, height) = (int.Parse(fields[1], CultureInfo.InvariantCulture), int.Parse(fields[2], CultureInfo.InvariantCulture));
            return new(width, height, bytes[at..]);
        }
    }

    public static T InFolder<T>(Func<string, T> work)
    {
        var folder = Directory.CreateTempSubdirectory("gaugerod-sheets-");
        try
        {
            return work(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
