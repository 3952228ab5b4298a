using System.Text.Encodings.Web;
using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>Opens a writer of a result document: indented, UTF-8 without a mark.</summary>
internal static class JsonDocuments
{
    // Letters, degree and middle dots stay readable; whatever could end a script or a string is still escaped.
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, Encoder = JavaScriptEncoder.Create(System.Text.Unicode.UnicodeRanges.All) };

    public static void Write(Stream stream, Action<Utf8JsonWriter> content)
    {
        using var json = new Utf8JsonWriter(stream ?? throw new ArgumentNullException(nameof(stream)), Options);
        content(json);
    }
}
