namespace Driveline.Cases.Results;

/// <summary>A kind of result with the options it is written with.</summary>
internal readonly struct ResultHead
{
    public ResultHead(ResultKind kind, ResultOptions options)
    {
        Kind = kind;
        Options = options;
    }

    public ResultKind Kind { get; }

    public ResultOptions Options { get; }
}
