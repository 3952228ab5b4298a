using Driveline.Monitoring;

namespace Driveline.Cli.Telemetry;

/// <summary>Opens a log of samples or of CAN frames, whichever it is.</summary>
internal static class TelemetryLog
{
    public const string Head = "time_s,inputSpeed_rpm,outputSpeed_rpm,torque_Nm";

    /// <summary>Opens a log by its first line that says something.</summary>
    /// <param name="reader">The log.</param>
    /// <param name="notes">What is told of its rows.</param>
    /// <param name="decoder">Makes samples of CAN frames.</param>
    /// <exception cref="BadInputException">It is empty, or begins as neither does.</exception>
    public static ITelemetry Open(TextReader reader, RowNotes notes, Func<EngineTorqueDecoder> decoder)
    {
        var lines = new LineReader(reader);
        while (lines.TryNext(out ReadOnlySpan<char> text))
        {
            if (lines.IsTooLong)
            {
                break;
            }

            if (!IsNothing(text))
            {
                return text.TrimStart()[0] == '('
                    ? new CanLog(lines, notes, decoder(), text.ToString())
                    : SampleTable.Open(text.ToString(), lines, notes);
            }
        }

        throw new BadInputException(lines.IsTooLong
            ? FormattableString.Invariant($"Line {lines.Line} is too long for a log; a head such as {Head} is wanted, or CAN frames.")
            : "The log is empty; a head such as " + Head + " is wanted, or CAN frames with their times.");
    }

    /// <summary>True for a line that is empty or a comment.</summary>
    public static bool IsNothing(ReadOnlySpan<char> text) => text.IsWhiteSpace() || text[0] == '#';
}
