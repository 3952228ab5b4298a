namespace Driveline.Cli;

/// <summary>The user's input is wrong: one line each says how.</summary>
internal sealed class BadInputException : Exception
{
    public BadInputException(params IReadOnlyList<string> problems)
        : base(problems.Count > 0 ? problems[0] : "Bad input.") => Problems = problems;

    /// <summary>Everything that is wrong.</summary>
    public IReadOnlyList<string> Problems { get; }
}
