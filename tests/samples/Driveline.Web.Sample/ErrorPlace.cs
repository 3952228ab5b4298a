using Driveline.Cases;

namespace Driveline.Web.Sample;

/// <summary>One thing that is wrong with a case, as a front end wants it.</summary>
internal sealed record ErrorPlace(string Path, int Line, int Column, string Message, string? Permitted, string? Received, string? Nearest)
{
    public static ErrorPlace Of(CaseError error) =>
        new(error.Path, error.Line, error.Column, error.Message, error.Permitted, error.Received, error.Nearest);
}
