using System.Text.Json;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What stands in the object of a band: its ends, and where they are from.</summary>
internal static class BandObject
{
    public const string Unbounded = "unbounded";
    public const string Source = "source";

    public static readonly Basis Case = Basis.Given("the case");
    public static readonly BandBasis OfCase = BandBasis.Of(Case);
    public static readonly string[] Ends = ["low", "expected", "high"];
    public static readonly TextValue SourceText = new(LongestSource);

    private const int LongestSource = 200;
    private static readonly string[] Names = [.. Ends, Source];

    /// <summary>Reads low, expected, high and the source; false when one of them is wrong.</summary>
    public static bool Read(
        ref Utf8JsonReader reader, CaseWalk walk, QuantityValue quantity, scoped Span<double?> ends, out bool isLowStated, out Basis basis)
    {
        bool isGood = true;
        basis = Case;
        int stated = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            long offset = reader.TokenStartIndex;
            int end = EndAt(ref reader);
            string? name = end < 0 ? CaseWalk.TextOrNull(ref reader) : Names[end];
            reader.Read();
            walk.Enter(name ?? "?");
            if (end < 0 || (stated & (1 << end)) != 0)
            {
                isGood = false;
                UnknownMember.Report(walk, offset, name, end >= 0, "a band", Names);
                reader.Skip();
            }
            else if (end == Ends.Length)
            {
                stated |= 1 << end;
                string? source = SourceText.Read(ref reader, walk);
                isGood &= source is not null;
                basis = source is null ? Case : Basis.Given(source);
            }
            else
            {
                stated |= 1 << end;
                ends[end] = ReadEnd(ref reader, walk, quantity, end);
                isGood &= ends[end] is not null;
            }

            walk.Leave();
        }

        isLowStated = (stated & 1) != 0;
        return isGood;
    }

    private static int EndAt(ref Utf8JsonReader reader)
    {
        for (int end = 0; end < Names.Length; end++)
        {
            if (CaseWalk.IsText(ref reader, Names[end]))
            {
                return end;
            }
        }

        return -1;
    }

    private static double? ReadEnd(ref Utf8JsonReader reader, CaseWalk walk, QuantityValue quantity, int end) =>
        end > 0 && reader.TokenType == JsonTokenType.String && CaseWalk.IsText(ref reader, Unbounded)
            ? double.PositiveInfinity
            : quantity.Read(ref reader, walk);
}
