namespace Gaugerod.Serve;

/// <summary>What kind of file a name stands for. Source: the IANA register of media types.</summary>
internal static class MediaTypes
{
    public static string Of(string path) => Path.GetExtension(path) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" or ".mjs" => "text/javascript; charset=utf-8",
        ".json" or ".map" => "application/json",
        ".webmanifest" => "application/manifest+json",
        ".wasm" => "application/wasm",
        ".svg" => "image/svg+xml",
        ".png" => "image/png",
        ".webp" => "image/webp",
        ".ico" => "image/vnd.microsoft.icon",
        ".ttf" => "font/ttf",
        ".woff2" => "font/woff2",
        ".txt" => "text/plain; charset=utf-8",
        ".md" => "text/markdown; charset=utf-8",
        _ => "application/octet-stream",
    };
}
