namespace Gaugerod.Engine.Sequencing;

/// <summary>Who gave a hold.</summary>
public enum HoldFrom
{
    /// <summary>Nothing has to be waited for.</summary>
    None,

    /// <summary>The product, by its bag or its data sheet.</summary>
    Product,

    /// <summary>The job, for all products.</summary>
    Job,

    /// <summary>Nobody: the longest that is published is taken.</summary>
    Published,

    /// <summary>Nobody, and nothing is published: no time is taken.</summary>
    Nobody,
}
