using Gaugerod.App;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.App.Sheetmaking;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Shell>("#app");
builder.Services.AddSingleton<JobDesk>();
builder.Services.AddSingleton<Shelf>();
builder.Services.AddSingleton<Updates>();
builder.Services.AddSingleton<Whereabouts>();
builder.Services.AddSingleton<Voice>();
builder.Services.AddSingleton<Paint>();
builder.Services.AddSingleton<Turns>();
builder.Services.AddSingleton<SheetMaker>();
await builder.Build().RunAsync();
