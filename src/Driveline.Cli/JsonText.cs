using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Driveline.Cases.Results;

namespace Driveline.Cli;

/// <summary>JSON for streams, and what stands in it.</summary>
internal static class JsonText
{
    /// <summary>Indented; letters of every language stay readable.</summary>
    public static JsonWriterOptions Options { get; } = new() { Indented = true, Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static void Print(Terminal terminal, ResultDocument result) => terminal.Output.WriteLine(result.ToJson());

    public static void Print(Terminal terminal, Action<Stream> write) => terminal.Output.WriteLine(Of(write));

    /// <summary>A text as a JSON value.</summary>
    public static string Quoted(string text) => "\"" + JsonEncodedText.Encode(text) + "\"";

    /// <summary>A constant as a case file writes it: its name with a small first letter.</summary>
    public static string Camel<T>(T constant)
        where T : struct, Enum
    {
        string name = constant.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    public static string Of(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
