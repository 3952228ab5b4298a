namespace Driveline.Cli;

/// <summary>The user's input is wrong: one line each says how.</summary>
internal sealed class BadInputException : Exception
{
    public BadInputException(params IReadOnlyList<string> problems)
        : base(problems.Count > 0 ? problems[0] : "Bad input.") => Problems = problems;

    /// <summary>What a library refused, without the name of its parameter, which means nothing to who typed a command.</summary>
    public static BadInputException Of(Exception failed)
    {
        string inner = failed is ArgumentException { ParamName: { } name } ? " (Parameter '" + name + "')" : string.Empty;
        return new BadInputException(inner.Length > 0 && failed.Message.EndsWith(inner, StringComparison.Ordinal)
            ? failed.Message[..^inner.Length] : failed.Message);
    }

    /// <summary>Everything that is wrong.</summary>
    public IReadOnlyList<string> Problems { get; }
}
