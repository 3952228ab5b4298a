namespace Driveline.Findings;

/// <summary>A thing that somebody tells of, and which facts of it are told; asked only when a finding rests on it.</summary>
internal interface IToldFacts
{
    /// <summary>Path of the thing.</summary>
    string Path { get; }

    /// <summary>True when the fact of that name is told.</summary>
    bool IsTold(string name);
}
