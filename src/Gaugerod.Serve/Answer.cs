using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Gaugerod.Serve;

/// <summary>Answers one request from the site.</summary>
internal static class Answer
{
    public static Task To(HttpContext context, Site site)
    {
        var (request, response) = (context.Request, context.Response);
        Guard(response.Headers, site);
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            response.Headers.Allow = "GET, HEAD";
            return Task.CompletedTask;
        }

        var shapes = site.Find(request.Path.Value ?? "/");
        if (shapes.Count == 0)
        {
            response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        }

        var shape = Choose(shapes, request.Headers.AcceptEncoding.ToString());
        var path = request.Path.Value!;
        response.Headers.ETag = shape.Tag;
        response.Headers.Vary = HeaderNames.AcceptEncoding;
        // The names stay the same from version to version, so every use asks first; the tag makes that cheap.
        response.Headers.CacheControl = "no-cache";
        if (Held(request.Headers.IfNoneMatch, shape.Tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        response.ContentType = MediaTypes.Of(path.EndsWith('/') ? "index.html" : path);
        response.ContentLength = shape.Bytes.Length;
        if (shape.Coding.Length > 0) response.Headers.ContentEncoding = shape.Coding;
        return HttpMethods.IsHead(request.Method) ? Task.CompletedTask : response.Body.WriteAsync(shape.Bytes, context.RequestAborted).AsTask();
    }

    /// <summary>The first shape that the asker takes; as it is, when it takes no packing.</summary>
    internal static Shape Choose(IReadOnlyList<Shape> shapes, string accepted)
    {
        var taken = accepted.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Split(';', StringSplitOptions.TrimEntries))
            .Where(parts => !parts.Skip(1).Any(part => part is "q=0" or "q=0.0" or "q=0.00" or "q=0.000"))
            .Select(parts => parts[0])
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        return shapes.FirstOrDefault(shape => taken.Contains(shape.Coding)) ?? shapes[^1];
    }

    private static bool Held(IEnumerable<string?> tags, string tag) => tags
        .SelectMany(line => (line ?? "").Split(',', StringSplitOptions.TrimEntries))
        .Any(held => held is "*" || string.Equals(held.StartsWith("W/", StringComparison.Ordinal) ? held[2..] : held, tag, StringComparison.Ordinal));

    private static void Guard(IHeaderDictionary headers, Site site)
    {
        // frame-ancestors is not heeded in a page's own meta element, so it is said here.
        headers.ContentSecurityPolicy = site.Policy + "; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
    }
}
