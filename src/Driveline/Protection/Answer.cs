namespace Driveline.Protection;

/// <summary>The answer to one of the two questions, worst knowledge first.</summary>
public enum Answer
{
    /// <summary>A needed fact is not known.</summary>
    NotKnown = 0,

    /// <summary>No: the expected values say so.</summary>
    No,

    /// <summary>It depends on the specimen, or a fact bars a Yes.</summary>
    Maybe,

    /// <summary>Yes: even the worst specimens allowed by the facts.</summary>
    Yes,
}
