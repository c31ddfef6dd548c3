using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Gaugerod.Serve;
using Gaugerod.Testing;

namespace Gaugerod.App.Tests;

/// <summary>How the published app is served. Sources: RFC 9110 (tags, 304, codings), RFC 9111 (no-cache), CSP Level 3.</summary>
[Collection(RigCollection.Name)]
public sealed class ServerTests(Rig rig) : IDisposable
{
    private readonly HttpClient _client = new(new SocketsHttpHandler { AutomaticDecompression = DecompressionMethods.None }) { BaseAddress = new(rig.Address) };

    [Theory]
    [InlineData("", "text/html; charset=utf-8")]
    [InlineData("index.html", "text/html; charset=utf-8")]
    [InlineData("service-worker.js", "text/javascript; charset=utf-8")]
    [InlineData("app.css", "text/css; charset=utf-8")]
    [InlineData("manifest.webmanifest", "application/manifest+json")]
    [InlineData("icon-192.png", "image/png")]
    [InlineData("icon.svg", "image/svg+xml")]
    [InlineData("_framework/dotnet.native.wasm", "application/wasm")]
    public async Task A_file_says_what_it_is_and_asks_before_it_is_used_again(string path, string type)
    {
        using var answer = await AskAsync(path, "br, gzip");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.ToString());
        Assert.Equal("no-cache", answer.Headers.CacheControl!.ToString());
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_packing_has_a_strong_tag_of_its_own_and_what_is_held_is_not_sent_again()
    {
        var tags = new List<string>();
        foreach (var (asked, given) in new[] { ("br, gzip", "br"), ("gzip", "gzip"), ("br;q=0, gzip", "gzip"), ("", "") })
        {
            using var answer = await AskAsync("_framework/dotnet.native.wasm", asked);
            Assert.Equal(given, answer.Content.Headers.ContentEncoding.SingleOrDefault() ?? "");
            Assert.False(answer.Headers.ETag!.IsWeak);
            tags.Add(answer.Headers.ETag.Tag);
        }

        Assert.Equal(3, tags.Distinct(StringComparer.Ordinal).Count());
        using var again = new HttpRequestMessage(HttpMethod.Get, "_framework/dotnet.native.wasm");
        again.Headers.TryAddWithoutValidation("Accept-Encoding", "br, gzip");
        again.Headers.TryAddWithoutValidation("If-None-Match", tags[0]);
        using var held = await _client.SendAsync(again);
        Assert.Equal(HttpStatusCode.NotModified, held.StatusCode);
        Assert.Empty(await held.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("/../Gaugerod.App.staticwebassets.endpoints.json")]
    [InlineData("/..%2f..%2f..%2f..%2frun")]
    [InlineData("/%2e%2e/%2e%2e/%2e%2e/%2e%2e/run")]
    [InlineData("/..\\..\\run")]
    [InlineData("//etc/passwd")]
    [InlineData("/app.css.br")]
    [InlineData("/_framework/")]
    public async Task Nothing_outside_the_published_app_is_served(string path)
    {
        // Spoken by hand: an ordinary client tidies such a path before it asks.
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, rig.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(System.Text.Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n"));
        using var reader = new StreamReader(stream);
        Assert.Matches("^HTTP/1.1 40[04] ", await reader.ReadLineAsync());
    }

    [Fact]
    public async Task Only_looking_is_allowed()
    {
        using var answer = await _client.PostAsync(new Uri("index.html", UriKind.Relative), null);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        using var asked = new HttpRequestMessage(HttpMethod.Head, "index.html");
        using var head = await _client.SendAsync(asked);
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task A_taken_port_gives_the_next_and_is_said_and_stopping_ends_well()
    {
        var server = Path.Combine(AppContext.BaseDirectory, "gaugerod-serve.dll");
        using var process = Process.Start(new ProcessStartInfo("dotnet", [server, Published.Folder, $"{rig.Port}"]) { RedirectStandardOutput = true })!;
        var said = await process.StandardOutput.ReadLineAsync();
        Assert.Contains($"Port {rig.Port} is taken", said, StringComparison.Ordinal);
        var address = (await process.StandardOutput.ReadLineAsync())!.Split(' ')[^1];
        Assert.NotEqual(rig.Address, address);
        using var answer = await _client.GetAsync(new Uri(address));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);

        // Ctrl-C sends INT and does the same, but INT is passed over by what was started in a shell's background.
        using var kill = Process.Start("kill", ["-TERM", $"{process.Id}"]);
        await process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(20));
        Assert.Equal(0, process.ExitCode);
    }

    [Fact]
    public void A_folder_without_the_app_is_refused_in_words()
    {
        var (site, trouble) = Site.Read(Path.Combine(Repo.Root, "samples"));
        Assert.Null(site);
        Assert.Contains("index.html", trouble, StringComparison.Ordinal);
    }

    public void Dispose() => _client.Dispose();

    private async Task<HttpResponseMessage> AskAsync(string path, string codings)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (codings.Length > 0) request.Headers.TryAddWithoutValidation("Accept-Encoding", codings);
        return await _client.SendAsync(request);
    }
}
