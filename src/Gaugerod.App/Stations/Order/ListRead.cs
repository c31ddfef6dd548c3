using Gaugerod.Engine.Prices;
using Gaugerod.Plane;

namespace Gaugerod.App.Stations.Order;

/// <summary>A price list as it was read.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Lines">Its lines; with what became of them once they were brought to a plan.</param>
/// <param name="Said">How it was read, in words.</param>
/// <param name="Currency">The currency it names; null for none.</param>
/// <param name="Refused">Why it is no list; empty where it is one.</param>
internal sealed record ListRead(string Name, Sequence<ListLine> Lines, Sequence<string> Said, Currency? Currency, string Refused);
