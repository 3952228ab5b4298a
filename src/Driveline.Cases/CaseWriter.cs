using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>Writes a case as a case file. What is written reads back as an equal case.</summary>
public static class CaseWriter
{
    /// <summary>The case as UTF-8 JSON, indented, without a byte-order mark.</summary>
    /// <exception cref="ArgumentException">
    /// The case is too large when written with its indents, so that it could not be read back.
    /// </exception>
    public static byte[] Write(CaseFile caseFile)
    {
        if (caseFile is null)
        {
            throw new ArgumentNullException(nameof(caseFile));
        }

        using var stream = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            MaxDepth = 1000,
        };
        using (var writer = new Utf8JsonWriter(stream, options))
        {
            ObjectWriter.Write(writer, caseFile.Facts);
        }

        byte[] utf8 = stream.ToArray();
        CaseReadResult again = CaseReader.Read(utf8);
        return again.IsRead
            ? utf8
            : throw new ArgumentException("This case cannot be written, since it could not be read back: "
                + string.Join(" ", again.Errors.Take(5)), nameof(caseFile));
    }

    /// <summary>The case as JSON text, indented.</summary>
    /// <exception cref="ArgumentException">As for <see cref="Write"/>.</exception>
    public static string ToJson(CaseFile caseFile) => Encoding.UTF8.GetString(Write(caseFile));
}
