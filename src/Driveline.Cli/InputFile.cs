using System.Text;
using Driveline.Cases;

namespace Driveline.Cli;

/// <summary>Reads what a path names; "-" is standard input.</summary>
internal static class InputFile
{
    /// <summary>Reads it by one of two readers.</summary>
    /// <param name="path">A file, or "-".</param>
    /// <param name="wanted">What the file should be, e.g. "a case file".</param>
    /// <param name="terminal">Where standard input is.</param>
    /// <param name="ofText">Reads standard input.</param>
    /// <param name="ofStream">Reads a file.</param>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public static T Read<T>(string path, string wanted, Terminal terminal, Func<string, T> ofText, Func<Stream, T> ofStream)
    {
        if (path == "-")
        {
            return ofText(ReadAll(terminal.Input));
        }

        if (Directory.Exists(path))
        {
            throw new BadInputException("'" + path + "' is a folder; " + wanted + " is wanted.");
        }

        if (!File.Exists(path))
        {
            throw new BadInputException("There is no file '" + path + "'.");
        }

        try
        {
            using FileStream stream = File.OpenRead(path);
            return ofStream(stream);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException("'" + path + "' cannot be read: " + failed.Message);
        }
    }

    /// <summary>Reads it line by line, however long it is.</summary>
    /// <param name="path">A file, or "-".</param>
    /// <param name="wanted">What the file should be, e.g. "a log".</param>
    /// <param name="terminal">Where standard input is.</param>
    /// <param name="read">Reads the lines.</param>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public static T ReadLines<T>(string path, string wanted, Terminal terminal, Func<TextReader, T> read) => path == "-"
        ? read(terminal.Input)
        : Read(path, wanted, terminal, text => read(new StringReader(text)), stream => read(new StreamReader(
            stream, Encoding.UTF8, detectEncodingFromByteOrderMarks: true, bufferSize: 65536)));

    /// <summary>Everything that is wrong with what was read, by where it came from; readers list no more than a thousand.</summary>
    public static BadInputException Refused(string from, IReadOnlyList<CaseError> errors) =>
        new([.. errors.Select(e => from + ": " + e)]);

    // One character more than is allowed is enough to be refused.
    private static string ReadAll(TextReader input)
    {
        var text = new StringBuilder();
        char[] buffer = new char[65536];
        int count;
        while (text.Length <= CaseReader.LargestBytes && (count = input.Read(buffer, 0, buffer.Length)) > 0)
        {
            text.Append(buffer, 0, count);
        }

        return text.ToString();
    }
}
