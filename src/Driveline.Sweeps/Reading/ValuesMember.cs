using System.Text;
using System.Text.Json;
using Driveline.Cases.Members;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>Values of the varied fact, each written as in the case.</summary>
internal sealed class ValuesMember(string name, CaseTarget? target, string doc) : ReadMember(name, doc)
{
    private const int Most = 10_000;

    public override string ValueWords => "list of values";

    public override string PermittedWords => "a list of 1 to 10000 values";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (target is null)
        {
            reader.Skip();
            return null;
        }

        var words = new List<string>();
        List<object>? facts = ListOf.Read(ref reader, walk, PermittedWords, 1, Most, (ref Utf8JsonReader at, CaseWalk w, int _) =>
        {
            int begin = (int)at.TokenStartIndex;
            string? text = at.TokenType == JsonTokenType.String ? CaseWalk.TextOrNull(ref at) : null;
            object? fact = target.Member.Read(ref at, w);
            words.Add(text ?? Encoding.UTF8.GetString(w.Text.Utf8, begin, (int)at.BytesConsumed - begin).ReplaceLineEndings(" "));
            return fact;
        });
        return facts is null ? null : new ValuesRead(facts, words);
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("minItems", 1);
        writer.WriteNumber("maxItems", Most);
    }
}
