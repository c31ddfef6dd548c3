namespace Gaugerod.App.Tests;
internal static class Placeholder;
