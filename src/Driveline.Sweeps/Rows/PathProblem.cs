namespace Driveline.Sweeps.Rows;

/// <summary>Why a path leads nowhere.</summary>
internal sealed record PathProblem(string Message, string? Permitted, string? Received, string? Nearest);
