using System.Text;

namespace Driveline.Cli;

/// <summary>Prints a JSON document that is written to a stream.</summary>
internal static class JsonText
{
    public static void Print(Terminal terminal, Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        terminal.Output.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }
}
