using System.Text.Json;
using Driveline.Advice;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of one object of the case file. Reader, writer, schema and docs page all follow them.</summary>
internal sealed class MemberTable
{
    private readonly List<Member> members = [];
    private readonly Dictionary<string, Member> byName = new(StringComparer.Ordinal);
    private MemberNames? names;
    private Member[]? required;
    private Member[]? naming;

    public MemberTable(string name, string doc)
        : this(name, doc, null)
    {
    }

    public MemberTable(string name, string doc, Action<CaseObject, CaseWalk>? across)
    {
        Across = across;
        Name = name;
        Doc = doc;
    }

    /// <summary>Name of the object, as its schema definition is called.</summary>
    public string Name { get; }

    /// <summary>What the object is.</summary>
    public string Doc { get; }

    public IReadOnlyList<Member> Members => members;

    /// <summary>Those that must be stated.</summary>
    public IReadOnlyList<Member> Required => required ??= [.. members.Where(m => m.IsRequired)];

    /// <summary>Those of which one names the kind of a driveline element.</summary>
    public IReadOnlyList<Member> Naming => naming ??= [.. members.Where(m => m.NamedKind != ElementKind.NotKnown)];

    /// <summary>True for the driveline element, whose one naming member decides which others it may have.</summary>
    public bool HasKinds { get; private set; }

    /// <summary>Checks that involve several members; run after all have been read.</summary>
    public Action<CaseObject, CaseWalk>? Across { get; }

    public Member? Find(string name) => byName.TryGetValue(name, out Member? member) ? member : null;

    /// <summary>The member whose name stands at the reader's token; null when the object has none of that name.</summary>
    public Member? Find(ref Utf8JsonReader reader) =>
        (names ??= new MemberNames(members)).Find(ref reader)
            ?? (reader.ValueIsEscaped && CaseWalk.TextOrNull(ref reader) is { } name ? Find(name) : null);

    public TextMember Text(string name, int longest, string doc) => Add(new TextMember(name, longest, doc));

    /// <summary>A text that names something of the core, e.g. a thread.</summary>
    public ParsedMember<T> Text<T>(string name, int longest, TextParser<T> parser, string doc)
        where T : class => Add(new ParsedMember<T>(name, longest, parser, doc));

    public FlagMember Flag(string name, string doc) => Add(new FlagMember(name, doc));

    public WholeMember Whole(string name, int low, int high, string doc) => Add(new WholeMember(name, low, high, doc));

    public DateMember Date(string name, string doc) => Add(new DateMember(name, doc));

    public ChoiceMember<T> Choice<T>(string name, string doc)
        where T : struct, Enum => Add(new ChoiceMember<T>(name, doc));

    /// <summary>A list of constants, each once.</summary>
    public ChoicesMember<T> Choices<T>(string name, string doc)
        where T : struct, Enum => Add(new ChoicesMember<T>(name, doc));

    public QuantityMember<T> Quantity<T>(string name, QuantityType<T> type, string interval, string doc)
        where T : struct => Add(new QuantityMember<T>(name, new QuantityValue(ValueRange.Of(type.Dimension, interval)), type.OfSi, doc));

    /// <summary>A quantity that may also be a number in SI.</summary>
    public QuantityMember<T> SiQuantity<T>(string name, QuantityType<T> type, string interval, string doc)
        where T : struct =>
            Add(new QuantityMember<T>(name, QuantityValue.OrSiNumber(ValueRange.Of(type.Dimension, interval)), type.OfSi, doc));

    /// <summary>An object whose members are names of the file's own, each with such a quantity.</summary>
    public NamedQuantitiesMember NamedQuantities(string name, Dimension dimension, string interval, string nameWords, string doc) =>
        Add(new NamedQuantitiesMember(name, QuantityValue.OrSiNumber(ValueRange.Of(dimension, interval)), nameWords, doc));

    public BandMember<TorqueBand> Torques(string name, string interval, string doc) =>
        Band(name, Dimension.Torque, interval, TorqueBand.OfSi, doc);

    public BandMember<PowerBand> Powers(string name, string interval, string doc) =>
        Band(name, Dimension.Power, interval, PowerBand.OfSi, doc);

    public BandMember<StressBand> Stresses(string name, string interval, string doc) =>
        Band(name, Dimension.Stress, interval, StressBand.OfSi, doc);

    public BandMember<LengthBand> Lengths(string name, string interval, string doc) =>
        Band(name, Dimension.Length, interval, LengthBand.OfSi, doc);

    public BandMember<RatioBand> Ratios(string name, string interval, string doc) =>
        Band(name, Dimension.Number, interval, RatioBand.OfSi, doc);

    /// <summary>An amount of money, 0 to 1000 million of whatever currency.</summary>
    public BandMember<MoneyBand> Money(string name, string doc) => Band(name, Dimension.Number, "[0; 1000000000]", MoneyBand.OfSi, doc);

    public BandMember<StiffnessBand> Stiffnesses(string name, string interval, string doc) =>
        Band(name, Dimension.TorsionalStiffness, interval, StiffnessBand.OfSi, doc);

    public BandMember<TimeBand> Times(string name, string interval, string doc) => Band(name, Dimension.Time, interval, TimeBand.OfSi, doc);

    /// <summary>The answer to a question of the advice's catalogue.</summary>
    public FactMember Fact(FactQuestion question, string doc) => Add(new FactMember(question, doc));

    public HoursMember Hours(FactQuestion question, string doc) => Add(new HoursMember(question, doc));

    public ObjectMember Object(string name, Func<MemberTable> table, string doc) => Add(new ObjectMember(name, table, doc));

    /// <summary>A list of objects.</summary>
    public ListMember Objects(string name, Func<MemberTable> table, int most, string doc) =>
        Add(new ListMember(name, table, most, null, null, null, doc));

    /// <summary>A list of objects that have a word for them.</summary>
    public ListMember Objects(string name, Func<MemberTable> table, int most, string items, string doc) =>
        Add(new ListMember(name, table, most, items, null, null, doc));

    /// <summary>A list of driveline elements.</summary>
    public ListMember Elements(string name, string doc) => Add(new ListMember(
        name, () => ElementMembers.Table, ElementMembers.MostInOneList, "elements", CaseChecks.Admits, CaseChecks.Shares, doc));

    private BandMember<T> Band<T>(string name, Dimension dimension, string interval, Func<Band, BandBasis, T> create, string doc)
        where T : QuantityBand => Add(new BandMember<T>(name, ValueRange.Of(dimension, interval), create, doc));

    /// <summary>A row of a kind of its own.</summary>
    public T Add<T>(T member)
        where T : Member
    {
        member.Slot = members.Count;
        members.Add(member);
        byName.Add(member.Name, member);
        return member;
    }

    internal MemberTable WithKinds()
    {
        HasKinds = true;
        return this;
    }
}
