using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;

namespace Gaugerod.Serve;

/// <summary>Serves the site on this machine alone.</summary>
internal static class Server
{
    /// <summary>How many ports after the wanted one are tried.</summary>
    private const int Tries = 50;

    /// <summary>Begins to serve on the wanted port, or on the next one that is free.</summary>
    /// <returns>The running server and its port; null when none of the ports is free.</returns>
    public static async Task<(WebApplication App, int Port)?> StartAsync(Site site, int port)
    {
        for (var at = port; at < port + Tries && at <= IPEndPoint.MaxPort; at++)
        {
            var app = Make(site, at);
            try
            {
                await app.StartAsync();
                return (app, at);
            }
            catch (IOException taken) when (taken.InnerException is AddressInUseException)
            {
                await app.DisposeAsync();
            }
        }

        return null;
    }

    public static string Address(int port) => string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}/");

    private static WebApplication Make(Site site, int port)
    {
        // Empty: no settings file, no environment and no log can change what is served or to whom.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        var app = builder.Build();
        app.Run(context => Answer.To(context, site));
        return app;
    }
}
