using System.CommandLine;

namespace Driveline.Cli.Pages;

/// <summary>The argument CASE where several are taken. What looks like an option is none of them.</summary>
internal static class CaseArgument
{
    public static Argument<string[]> Several(string description, bool isNeeded)
    {
        var cases = new Argument<string[]>("CASE")
        {
            Description = description,
            Arity = isNeeded ? ArgumentArity.OneOrMore : ArgumentArity.ZeroOrMore,
        };
        cases.Validators.Add(result =>
        {
            foreach (string wrong in result.Tokens.Select(t => t.Value).Where(IsOption))
            {
                result.AddError("Unrecognized command or argument '" + wrong + "'.");
            }
        });
        return cases;
    }

    public static bool IsOption(string token) => token.Length > 1 && token[0] == '-';
}
