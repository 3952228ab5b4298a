using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>The object that is written of a value of one type.</summary>
/// <typeparam name="T">What it is written of.</typeparam>
internal sealed class ShapeOf<T> : ResultShape
{
    private Row[] rows = [];
    private FixedResults? kept;
    private bool isRepeated;

    public ShapeOf(string name, string doc)
        : base(name, doc)
    {
    }

    /// <summary>Writes the value of a member.</summary>
    public delegate void Writer(ResultWriter json, T value, ResultOptions to);

    /// <summary>The same shape, of what stands in a result again and again: it is copied from where it was written first.</summary>
    public ShapeOf<T> Repeated()
    {
        isRepeated = true;
        return this;
    }

    /// <summary>The same shape, of what is written the same way in every result.</summary>
    public ShapeOf<T> Fixed()
    {
        kept = new FixedResults();
        return this;
    }

    /// <summary>Writes the object.</summary>
    public void Write(ResultWriter json, T value, ResultOptions to)
    {
        bool isCopied = isRepeated && json.IsCompact;
        if ((isCopied && json.TryRepeat(value!)) || kept?.TryWrite(json, value!, to) == true)
        {
            return;
        }

        int begin = json.Position;
        json.StartObject();
        WriteMembers(json, value, to);
        json.EndObject();
        kept?.Keep(json, value!, to, begin);
        if (isCopied)
        {
            json.Remember(value!, begin);
        }
    }

    /// <summary>Writes the members alone.</summary>
    public void WriteMembers(ResultWriter json, T value, ResultOptions to)
    {
        Row[] all = rows;
        for (int k = 0; k < all.Length; k++)
        {
            json.Name(all[k].Name);
            all[k].Write(json, value, to);
        }
    }

    public ShapeOf<T> Text(string name, Func<T, string> of, string doc) =>
        Add(name, ResultType.Text, doc, (json, value, _) => json.Text(of(value)));

    public ShapeOf<T> MaybeText(string name, Func<T, string?> of, string doc) =>
        Add(name, ResultType.MaybeText, doc, (json, value, _) => json.Text(of(value)));

    /// <summary>A text in the language of the result.</summary>
    public ShapeOf<T> Words(string name, Func<T, Texts, DisplayUnits, string> of, string doc) =>
        Add(name, ResultType.Text, doc, (json, value, to) => json.Text(of(value, to.Texts, to.Units)));

    public ShapeOf<T> MaybeWords(string name, Func<T, Texts, DisplayUnits, string?> of, string doc) =>
        Add(name, ResultType.MaybeText, doc, (json, value, to) => json.Text(of(value, to.Texts, to.Units)));

    public ShapeOf<T> Flag(string name, Func<T, bool> of, string doc) =>
        Add(name, ResultType.Flag, doc, (json, value, _) => json.Flag(of(value)));

    public ShapeOf<T> MaybeFlag(string name, Func<T, bool?> of, string doc) => Add(name, ResultType.MaybeFlag, doc, (json, value, _) =>
    {
        if (of(value) is { } known)
        {
            json.Flag(known);
        }
        else
        {
            json.Null();
        }
    });

    public ShapeOf<T> Choice<TEnum>(string name, Func<T, TEnum> of, string doc)
        where TEnum : struct, Enum
    {
        ChoiceWords<TEnum> words = ChoiceWords<TEnum>.All;
        return Add(name, ResultType.Choice(words.Names, false), doc, (json, value, _) => json.Word(words.Of(of(value))));
    }

    public ShapeOf<T> MaybeChoice<TEnum>(string name, Func<T, TEnum?> of, string doc)
        where TEnum : struct, Enum
    {
        ChoiceWords<TEnum> words = ChoiceWords<TEnum>.All;
        return Add(name, ResultType.Choice(words.Names, true), doc, (json, value, _) =>
        {
            if (of(value) is { } known)
            {
                json.Word(words.Of(known));
            }
            else
            {
                json.Null();
            }
        });
    }

    public ShapeOf<T> Whole(string name, Func<T, long> of, string doc) =>
        Add(name, ResultType.Whole, doc, (json, value, _) => json.Whole(of(value)));

    /// <summary>A number; null when it is not known, "unbounded" when it has no end.</summary>
    public ShapeOf<T> Number(string name, Func<T, double?> of, string doc) =>
        Add(name, ResultType.Number, doc, (json, value, _) => JsonNumbers.Value(json, of(value)));

    /// <summary>A margin; null when it is not known, which it is not when the other side has no end.</summary>
    public ShapeOf<T> Margin(string name, Func<T, double?> of, string doc) => Number(
        name, value => of(value) is > 0 and { } margin ? margin : null, doc);

    public ShapeOf<T> Band(string name, Func<T, QuantityBand?> of, string doc) => Maybe(name, of, BandRows.Shape, doc);

    public ShapeOf<T> Probability(string name, Func<T, Protection.Probability?> of, string doc) =>
        Number(name, value => of(value) is { } known ? JsonNumbers.Clipped(known) : null, doc + " 0.001 to 0.999.");

    // Most lists of a result are arrays, which need no interface to be asked for each item.
    public ShapeOf<T> Texts(string name, Func<T, IReadOnlyList<string>> of, string doc) =>
        Add(name, ResultType.Texts, doc, (json, value, _) =>
        {
            IReadOnlyList<string> texts = of(value);
            string[]? all = texts as string[];
            json.StartArray();
            for (int k = 0; k < texts.Count; k++)
            {
                json.Item();
                json.Text(all is null ? texts[k] : all[k]);
            }

            json.EndArray();
        });

    public ShapeOf<T> Object<TPart>(string name, Func<T, TPart> of, ShapeOf<TPart> shape, string doc) =>
        Add(name, ResultType.Object(shape, false), doc, (json, value, to) => shape.Write(json, of(value), to));

    public ShapeOf<T> Maybe<TPart>(string name, Func<T, TPart?> of, ShapeOf<TPart> shape, string doc)
        where TPart : class => Add(name, ResultType.Object(shape, true), doc, (json, value, to) =>
        {
            if (of(value) is { } part)
            {
                shape.Write(json, part, to);
            }
            else
            {
                json.Null();
            }
        });

    public ShapeOf<T> List<TItem>(string name, Func<T, IReadOnlyList<TItem>> of, ShapeOf<TItem> shape, string doc) =>
        Add(name, ResultType.List(shape), doc, (json, value, to) =>
        {
            IReadOnlyList<TItem> items = of(value);
            TItem[]? all = items as TItem[];
            json.StartArray();
            for (int k = 0; k < items.Count; k++)
            {
                json.Item();
                shape.Write(json, all is null ? items[k] : all[k], to);
            }

            json.EndArray();
        });

    /// <summary>Objects by names of their own.</summary>
    public ShapeOf<T> Map<TItem>(
        string name, Func<T, IReadOnlyList<KeyValuePair<string, TItem>>> of, ShapeOf<TItem> shape, string doc) =>
        Add(name, ResultType.Map(shape), doc, (json, value, to) =>
        {
            json.StartObject();
            foreach (KeyValuePair<string, TItem> item in of(value))
            {
                json.Name(item.Key);
                shape.Write(json, item.Value, to);
            }

            json.EndObject();
        });

    /// <summary>A list whose items are written with what holds them.</summary>
    public ShapeOf<T> List<TItem, TPart>(
        string name, Func<T, IReadOnlyList<TItem>> of, Func<T, TItem, TPart> with, ShapeOf<TPart> shape, string doc) =>
        Add(name, ResultType.List(shape), doc, (json, value, to) =>
        {
            IReadOnlyList<TItem> items = of(value);
            TItem[]? all = items as TItem[];
            json.StartArray();
            for (int k = 0; k < items.Count; k++)
            {
                json.Item();
                shape.Write(json, with(value, all is null ? items[k] : all[k]), to);
            }

            json.EndArray();
        });

    /// <summary>A member that writes itself.</summary>
    public ShapeOf<T> Add(string name, ResultType type, string doc, Writer write)
    {
        Describe(name, type, doc);
        rows = [.. rows, new Row(ResultWord.Name(name), write)];
        return this;
    }

    private readonly struct Row
    {
        public Row(ResultWord name, Writer write)
        {
            Name = name;
            Write = write;
        }

        public ResultWord Name { get; }

        public Writer Write { get; }
    }
}
