namespace Driveline.Fleet;

/// <summary>What a driveline answers to its registration. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.RegistrationAnswer")]
public sealed class RegistrationAnswer
{
    internal RegistrationAnswer(bool isNew, IReadOnlyList<string> problems)
    {
        IsNew = isNew;
        this.problems = [.. problems];
    }

    [Id(1)]
    private readonly string[] problems;

    /// <summary>True when it was not registered before.</summary>
    [Id(0)]
    public bool IsNew { get; }

    /// <summary>Everything that is wrong; empty when it is registered.</summary>
    public IReadOnlyList<string> Problems => Array.AsReadOnly(problems);

    /// <summary>True when it is registered, now or before, with just these facts.</summary>
    public bool IsRegistered => problems.Length == 0;
}
