namespace Driveline.Sweeps;

/// <summary>A file of a study cannot be written, resumed or merged; the message says why and what can be done.</summary>
public sealed class StudyFileException : Exception
{
    /// <summary>With a message.</summary>
    public StudyFileException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and its cause.</summary>
    public StudyFileException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
