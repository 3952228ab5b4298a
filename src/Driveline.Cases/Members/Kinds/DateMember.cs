using System.Globalization;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A calendar date, written year-month-day.</summary>
internal sealed class DateMember : ValueMember<DateTime>
{
    private const string Format = "yyyy-MM-dd";
    private static readonly DateTime First = new(1900, 1, 1);
    private static readonly DateTime Last = new(2199, 12, 31);

    public DateMember(string name, string doc)
        : base(name, doc)
    {
    }

    public override string ValueWords => "date";

    public override string? PermittedWords => "a date such as \"2026-05-31\", from 1900 to 2199";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string? text = walk.TextOf(ref reader, PermittedWords!);
        if (text is null)
        {
            return null;
        }

        if (!DateTime.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime date) || date < First
            || date > Last)
        {
            string shown = CaseWalk.Shown(text);
            walk.Error(CaseErrorKind.NotReadable, offset, "Here " + PermittedWords + " is wanted; got \"" + shown + "\".", PermittedWords,
                shown, null);
            return null;
        }

        return date;
    }

    public override void Write(Utf8JsonWriter writer, object value) =>
        writer.WriteStringValue(((DateTime)value).ToString(Format, CultureInfo.InvariantCulture));

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "string");
        writer.WriteString("format", "date");
        writer.WriteString("pattern", "^[12][0-9]{3}-[01][0-9]-[0-3][0-9]$");
    }
}
