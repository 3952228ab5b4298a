using System.Text;

namespace Driveline.Cases.Results;

/// <summary>A word or a name of a member as it stands in JSON, encoded once.</summary>
internal sealed class ResultWord
{
    /// <summary>Bytes that are copied at once: most words are shorter, and a copy of a fixed length needs no loop.</summary>
    public const int AtOnce = 32;

    private ResultWord(string json)
    {
        byte[] encoded = Encoding.UTF8.GetBytes(json);
        Length = encoded.Length;
        Padded = new byte[Math.Max(encoded.Length, AtOnce + 1)];
        encoded.CopyTo(Padded, 0);
    }

    /// <summary>The bytes, with zeros behind them.</summary>
    public byte[] Padded { get; }

    /// <summary>How many of them count.</summary>
    public int Length { get; }

    /// <summary>A word such as null.</summary>
    public static ResultWord Bare(string json) => new(json);

    /// <summary>A text in quotation marks.</summary>
    public static ResultWord Text(string text) => new(Quoted(text));

    /// <summary>A name with the comma before it and the colon after it.</summary>
    public static ResultWord Name(string name) => new("," + Quoted(name) + ":");

    private static string Quoted(string text) => "\"" + ResultWriter.Encoder.Encode(text) + "\"";
}
