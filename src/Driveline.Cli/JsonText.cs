using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Driveline.Cases.Results;

namespace Driveline.Cli;

/// <summary>Prints a JSON document that is written to a stream.</summary>
internal static class JsonText
{
    /// <summary>Indented; letters of every language stay readable.</summary>
    public static JsonWriterOptions Options { get; } = new() { Indented = true, Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static void Print(Terminal terminal, ResultDocument result) => terminal.Output.WriteLine(result.ToJson());

    public static void Print(Terminal terminal, Action<Stream> write) => terminal.Output.WriteLine(Of(write));

    public static string Of(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
