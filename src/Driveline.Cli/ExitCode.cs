namespace Driveline.Cli;

/// <summary>Exit codes of the tool.</summary>
internal static class ExitCode
{
    /// <summary>The question was answered.</summary>
    public const int Answered = 0;

    /// <summary>A case was assessed and is not protected.</summary>
    public const int NotProtected = 1;

    /// <summary>The input is wrong.</summary>
    public const int BadInput = 2;

    /// <summary>The tool itself failed.</summary>
    public const int InternalFault = 3;
}
