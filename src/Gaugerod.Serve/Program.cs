using System.Globalization;
using System.Net;
using Gaugerod.Serve;
using Microsoft.Extensions.Hosting;

const int UsualPort = 4817;
const int NotUsable = 2;

var port = UsualPort;
if (args.Length is 0 or > 2 || (args.Length == 2 && (!int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out port) || port is 0 or > IPEndPoint.MaxPort)))
{
    await Console.Error.WriteLineAsync("error: expected the folder of the published app, and perhaps a port from 1 to 65535.");
    return NotUsable;
}

var (site, trouble) = Site.Read(args[0]);
if (site is null)
{
    await Console.Error.WriteLineAsync("error: " + trouble);
    return NotUsable;
}

if (await Server.StartAsync(site, port) is not { } running)
{
    await Console.Error.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"error: port {port} and those after it are taken."));
    return NotUsable;
}

await using var app = running.App;
if (running.Port != port) await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"Port {port} is taken, so {running.Port} is used. Jobs kept at another address are not seen at this one."));
await Console.Out.WriteLineAsync($"Gaugerod is at {Server.Address(running.Port)}");
await Console.Out.WriteLineAsync("It is for this machine alone. Ctrl-C ends it; the page then goes on without it.");
await app.WaitForShutdownAsync();
return 0;
