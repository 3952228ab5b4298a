namespace Driveline.Cli.Tests;

/// <summary>One run of the tool in this process.</summary>
internal sealed class CliRun
{
    private CliRun(int code, string output, string error)
    {
        Code = code;
        Output = output;
        Error = error;
    }

    public int Code { get; }

    public string Output { get; }

    public string Error { get; }

    public static CliRun Of(params string[] args) => WithInput(string.Empty, args);

    public static CliRun WithInput(string input, params string[] args)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        int code = Cli.Run(args, new StringReader(input), output, error);
        return new CliRun(code, output.ToString(), error.ToString());
    }

    /// <summary>A run that must refuse its input: exit 2, nothing answered, no stack trace.</summary>
    public static string Refused(string input, params string[] args)
    {
        CliRun run = WithInput(input, args);
        Assert.Equal(2, run.Code);
        Assert.Empty(run.Output);
        Assert.NotEmpty(run.Error);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("internal fault", run.Error, StringComparison.Ordinal);
        return run.Error;
    }
}
