using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Sharing;
using Gaugerod.Engine.Tests.Sharing;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

// The mixed jobs of `cutting 100`, searched where the app runs: one thread, no code compiled ahead. Publish, serve
// wwwroot with any server of files, open the page; what it measures stands in the browser's console, a line a job.
await using var host = WebAssemblyHostBuilder.CreateDefault(args).Build();
var running = host.RunAsync();
var (near, late) = (0, new List<int>());
for (var seed = 5000; seed < 5100; seed++)
{
    var (stock, blanks) = BlankSets.Mixed(seed, 120);
    var watch = Stopwatch.StartNew();
    var search = new SharingSearch(new(stock, blanks), 10_000_000);
    var (within, longest, last) = (-1.0, 0.0, 0.0);
    foreach (var sofar in search.Steps())
    {
        var now = watch.Elapsed.TotalMilliseconds;
        (longest, last) = (Math.Max(longest, now - last), now);
        if (within < 0 && sofar.Fills.Count <= sofar.Least + 1) within = now;
        if (now > 30_000) break;
    }

    // The last step ends without another.
    if (within < 0 && search.Best.Fills.Count <= search.Best.Least + 1) within = watch.Elapsed.TotalMilliseconds;
    if (within is >= 0 and <= 10_000) near++;
    else late.Add(seed);
    Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{seed}: {search.Best.Fills.Count} tiles, at least {search.Best.Least}; within one after {within:0} ms, ended after {watch.Elapsed.TotalMilliseconds:0} ms, longest step {longest:0} ms"));
    await Task.Delay(1);
}

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{near} of 100 within one tile of the bound in 10 s; not: {string.Join(' ', late)}. Done."));
await running;
