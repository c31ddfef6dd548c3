using Gaugerod.Testing;

namespace Gaugerod.App.Tests;

/// <summary>The screens of a long walk, whether it is a phone's: the phone's every day, and the laptop's as well in a long run.</summary>
public sealed class Screens : TheoryData<bool>
{
    public Screens()
    {
        Add(true);
        if (Cases.IsLong) Add(false);
    }
}
