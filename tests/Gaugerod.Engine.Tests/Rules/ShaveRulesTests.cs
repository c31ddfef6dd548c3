using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Tests.Planning;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>Strips too thin to be scored and snapped. The limit, 1/8 in or 3 mm, is common practice, no source.</summary>
public sealed class ShaveRulesTests
{
}
