using Driveline.Advice;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of one object of the case file. Reader, writer, schema and docs page all follow them.</summary>
internal sealed class MemberTable
{
    private readonly List<Member> members = [];
    private readonly Dictionary<string, Member> byName = new(StringComparer.Ordinal);
    private readonly Func<object?[], CaseFacts> create;

    public MemberTable(string name, string doc, Func<object?[], CaseFacts> create)
        : this(name, doc, create, null)
    {
    }

    public MemberTable(string name, string doc, Func<object?[], CaseFacts> create, Action<CaseDraft, CaseWalk>? across)
    {
        Across = across;
        Name = name;
        Doc = doc;
        this.create = create;
    }

    /// <summary>A table of an object that stays a draft.</summary>
    public static MemberTable OfDraft(string name, string doc, Action<CaseDraft, CaseWalk>? across) =>
        new(name, doc, _ => throw new InvalidOperationException("A " + name + " stays a draft."), across);

    /// <summary>Name of the object, as its schema definition is called.</summary>
    public string Name { get; }

    /// <summary>What the object is.</summary>
    public string Doc { get; }

    public IReadOnlyList<Member> Members => members;

    /// <summary>True for the driveline element, whose one naming member decides which others it may have.</summary>
    public bool HasKinds { get; private set; }

    /// <summary>Checks that involve several members; run after all have been read.</summary>
    public Action<CaseDraft, CaseWalk>? Across { get; }

    public Member? Find(string name) => byName.TryGetValue(name, out Member? member) ? member : null;

    public CaseFacts Create(object?[] values) => create(values);

    public TextMember Text(string name, int longest, string doc) => Add(new TextMember(name, longest, null, doc));

    /// <summary>A text that must also be readable as something, e.g. a thread.</summary>
    public TextMember Text(string name, int longest, Func<string, string?> problemOf, string doc) => Add(new TextMember(name, longest, problemOf, doc));

    public FlagMember Flag(string name, string doc) => Add(new FlagMember(name, doc));

    public WholeMember Whole(string name, int low, int high, string doc) => Add(new WholeMember(name, low, high, doc));

    public DateMember Date(string name, string doc) => Add(new DateMember(name, doc));

    public ChoiceMember<T> Choice<T>(string name, string doc)
        where T : struct, Enum => Add(new ChoiceMember<T>(name, doc));

    public QuantityMember Quantity(string name, Dimension dimension, string interval, string doc) =>
        Add(new QuantityMember(name, ValueRange.Of(dimension, interval), doc));

    public BandMember Torques(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Torque, interval), TorqueBand.OfSi, doc));

    public BandMember Powers(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Power, interval), PowerBand.OfSi, doc));

    public BandMember Stresses(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Stress, interval), StressBand.OfSi, doc));

    public BandMember Lengths(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Length, interval), LengthBand.OfSi, doc));

    public BandMember Ratios(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Number, interval), RatioBand.OfSi, doc));

    /// <summary>An amount of money, 0 to 1000 million of whatever currency.</summary>
    public BandMember Money(string name, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Number, "[0; 1000000000]"), MoneyBand.OfSi, doc));

    /// <summary>The answer to a question of the advice's catalogue.</summary>
    public FactMember Fact(FactQuestion question, string doc) => Add(new FactMember(question, doc));

    public HoursMember Hours(FactQuestion question, string doc) => Add(new HoursMember(question, doc));

    public BandMember Stiffnesses(string name, string interval, string doc) =>
        Add(new BandMember(name, ValueRange.Of(Dimension.TorsionalStiffness, interval), StiffnessBand.OfSi, doc));

    public BandMember Times(string name, string interval, string doc) => Add(new BandMember(name, ValueRange.Of(Dimension.Time, interval), TimeBand.OfSi, doc));

    public ObjectMember Object(string name, Func<MemberTable> table, string doc) => Add(new ObjectMember(name, table, doc));

    public ElementsMember Elements(string name, Func<MemberTable> table, string doc) => Add(new ElementsMember(name, table, doc));

    public OptionsMember Options(string name, Func<MemberTable> table, string doc) => Add(new OptionsMember(name, table, doc));
    /// <summary>An object that stays a draft.</summary>
    public DraftMember Draft(string name, Func<MemberTable> table, string doc) => Add(new DraftMember(name, table, doc));

    /// <summary>A list of objects that stay drafts.</summary>
    public DraftsMember Drafts(string name, Func<MemberTable> table, int most, string doc) => Add(new DraftsMember(name, table, most, doc));

    /// <summary>A quantity that may also be a number in SI.</summary>
    public QuantityMember SiQuantity(string name, Dimension dimension, string interval, string doc) =>
        Add(new QuantityMember(name, QuantityValue.OrSiNumber(ValueRange.Of(dimension, interval)), doc));

    /// <summary>An object whose members are names of the file's own, each with such a quantity.</summary>
    public NamedQuantitiesMember NamedQuantities(string name, Dimension dimension, string interval, string nameWords, string doc) =>
        Add(new NamedQuantitiesMember(name, QuantityValue.OrSiNumber(ValueRange.Of(dimension, interval)), nameWords, doc));

    public object?[] NoValues() => new object?[members.Count];

    private T Add<T>(T member)
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
