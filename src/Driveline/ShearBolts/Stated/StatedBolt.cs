using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>What is told of a bolt or pin: its body, its material, the marks on its head, and where it is cut.</summary>
/// <remarks>
/// Immutable. A measured hardness beats the grade; marks that belong to neither leave open which bolt was measured. A step or taper is a
/// maker's special, known by its neck diameter and measured hardness only; a turned neck in a graded bolt keeps the grade.
/// </remarks>
public sealed class StatedBolt
{
    private IReadOnlyList<FactConflict>? conflicts;
    private ShearBolt? built;
    private bool isOpen;

    private StatedBolt(ScrewThread? thread, Length? pinDiameter, SpringPin? springPin)
    {
        Thread = thread;
        PinDiameter = pinDiameter;
        SpringPin = springPin;
    }

    /// <summary>A bolt of which not even the size is known.</summary>
    public static StatedBolt NotKnown { get; } = new(null, null, null);

    /// <summary>Its thread; null for a pin, and when not known.</summary>
    public ScrewThread? Thread { get; }

    /// <summary>Diameter of a plain pin or rod; null for anything else.</summary>
    public Length? PinDiameter { get; }

    /// <summary>The spring pin it is; null for anything else.</summary>
    public SpringPin? SpringPin { get; }

    /// <summary>The material it is said to be of.</summary>
    public MaterialName Material { get; private set; } = MaterialName.NotKnown;

    /// <summary>Its measured hardness; null when not measured.</summary>
    public Hardness? Hardness { get; private set; }

    /// <summary>The marks seen on its head; null when nobody looked.</summary>
    public HeadMark? HeadMark { get; private set; }

    /// <summary>Which part of it the shear plane cuts.</summary>
    public PlaneThrough PlaneThrough { get; private set; }

    /// <summary>Diameter of its neck, step or taper; null when not told.</summary>
    public Length? NeckDiameter { get; private set; }

    /// <summary>Its length under the head, on which the strength of some grades depends; null when not told.</summary>
    public Length? BoltLength { get; private set; }

    /// <summary>Length of its thread, run-out included; null when not known.</summary>
    public Length? ThreadLength { get; private set; }

    /// <summary>Measured diameter of its plain shank; null when not measured.</summary>
    public Length? ShankDiameter { get; private set; }

    /// <summary>Style of its body; decides how thick a shank of its size may be.</summary>
    public BodyStyle BodyStyle { get; private set; }

    /// <summary>The machine maker's number on its bag, or in the parts list; null when not known.</summary>
    public string? PartNumber { get; private set; }

    /// <summary>The bolt that this is; null while its size is not known, and when facts contradict each other.</summary>
    public ShearBolt? Bolt => Conflicts.Count > 0 ? null : built ??= Built();

    /// <summary>Facts that contradict each other; empty when all fit.</summary>
    public IReadOnlyList<FactConflict> Conflicts => conflicts ??= [.. StatedBoltConflicts.Of(this)];

    /// <summary>
    /// What the marks on the head mean. A stated grade settles which of several it is, or contradicts them all, which the bolt reports.
    /// </summary>
    internal IEnumerable<Finding> MarkFindings => HeadMark is { } mark && Thread is { } thread
        ? HeadMarks.Identify(mark, thread).Findings
            .Where(f => Material.Grade is null || f.Code != FastenerFindings.SeveralGradesFitTheMark)
            .Select(f => f.WithBecause(BoltFact.HeadMarks))
        : [];

    /// <summary>Nominal diameter; null when not known.</summary>
    internal double? DiameterM => SpringPin?.DiameterM ?? (PinDiameter is { } pin ? Si.Meters(pin) : Thread?.MajorDiameterM);

    /// <summary>A bolt of a thread.</summary>
    public static StatedBolt OfThread(ScrewThread thread) => new(Guard.NotNull(thread, nameof(thread)), null, null);

    /// <summary>A plain pin or rod without thread.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static StatedBolt OfPin(Length diameter)
    {
        Guard.Positive(Si.Meters(diameter), "Pin diameter", "m", nameof(diameter));
        return new StatedBolt(null, diameter, null);
    }

    /// <summary>A spring pin, which is known by its standard and size alone.</summary>
    public static StatedBolt OfSpringPin(SpringPin pin) => new(null, null, Guard.NotNull(pin, nameof(pin)));

    /// <summary>The same bolt of a material: a grade, a rod material, unmarked.</summary>
    public StatedBolt With(MaterialName material)
    {
        Guard.NotNull(material, nameof(material));
        return Changed(material, static (b, value) => b.Material = value);
    }

    /// <summary>The same bolt with its measured hardness, which beats the grade.</summary>
    public StatedBolt With(Hardness hardness)
    {
        Guard.NotNull(hardness, nameof(hardness));
        return Changed(hardness, static (b, value) => b.Hardness = value);
    }

    /// <summary>The same bolt with the marks seen on its head.</summary>
    public StatedBolt With(HeadMark mark)
    {
        Guard.NotNull(mark, nameof(mark));
        return Changed(mark, static (b, value) => b.HeadMark = value);
    }

    /// <summary>The same bolt with the part that its shear plane cuts.</summary>
    public StatedBolt With(PlaneThrough plane) => Changed(plane, static (b, value) => b.PlaneThrough = value);

    /// <summary>The same bolt with the diameter of its neck, step or taper.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public StatedBolt WithNeckDiameter(Length diameter)
    {
        Guard.Positive(Si.Meters(diameter), "Neck diameter", "m", nameof(diameter));
        return Changed(diameter, static (b, value) => b.NeckDiameter = value);
    }

    /// <summary>The same bolt with its length under the head.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public StatedBolt WithBoltLength(Length underHead)
    {
        Guard.Positive(Si.Meters(underHead), "Bolt length", "m", nameof(underHead));
        return Changed(underHead, static (b, value) => b.BoltLength = value);
    }

    /// <summary>
    /// The bolt in the place of another, as a manual names it: a plain bolt is cut where the fitted plain bolt is cut, since the joint
    /// decides that, not the bolt.
    /// </summary>
    /// <summary>The same with the length of its thread, run-out included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public StatedBolt WithThreadLength(Length thread)
    {
        Guard.Positive(Si.Meters(thread), "Thread length", "m", nameof(thread));
        return Changed(thread, static (b, value) => b.ThreadLength = value);
    }

    /// <summary>The same with the measured diameter of its plain shank.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public StatedBolt WithShankDiameter(Length measured)
    {
        Guard.Positive(Si.Meters(measured), "Shank diameter", "m", nameof(measured));
        return Changed(measured, static (b, value) => b.ShankDiameter = value);
    }

    /// <summary>The same with the style of its body.</summary>
    public StatedBolt With(BodyStyle style) => Changed(style, static (b, value) => b.BodyStyle = value);

    /// <summary>The same with the machine maker's number for it.</summary>
    /// <exception cref="ArgumentException">The number is blank.</exception>
    public StatedBolt WithPartNumber(string number)
    {
        Guard.NotBlank(number, "Part number", nameof(number));
        return Changed(number, static (b, value) => b.PartNumber = value);
    }

    /// <summary>The bolt, or that it is not identified.</summary>
    public override string ToString() => Bolt?.ToString() ?? "not identified";

    internal ShearBolt? InPlaceOf(ShearBolt fitted) => PlaneThrough == PlaneThrough.NotKnown && PinDiameter is null && !fitted.NeedsNeck
        ? With(fitted.PlaneThrough).Bolt
        : Bolt;

    private ShearBolt? Built() => SpringPin is not null ? ShearBolt.SpringPin(SpringPin)
        : PinDiameter is { } diameter ? Pin(diameter)
        : Thread is not null ? Marked(Threaded(Thread), Thread)
        : null;

    private ShearBolt Pin(Length diameter)
    {
        FastenerMaterial material = (Hardness ?? Material.Hardness) is { } measured ? FastenerMaterial.OfMeasuredHardness(measured)
            : Material.Own is { } own ? own
            : Material.RodMaterial is { } rod ? FastenerMaterial.Rod(rod)
            : FastenerMaterial.NotKnown;
        ShearBolt pin = ShearBolt.Pin(diameter, material);
        pin = PlaneThrough == PlaneThrough.NotKnown ? pin : pin.With(PlaneThrough);
        return NeckDiameter is { } neck ? pin.WithNeckDiameter(neck) : pin;
    }

    private ShearBolt Threaded(ScrewThread thread)
    {
        FastenerMaterial material = MaterialAt(thread);
        if (PlaneThrough is PlaneThrough.Step or PlaneThrough.Taper || (PlaneThrough == PlaneThrough.Neck && material.Grade is null))
        {
            return ShearBolt.Special(thread, PlaneThrough, NeckDiameter, Hardness ?? Material.Hardness);
        }

        ShearBolt bolt = ShearBolt.Of(thread, material).With(PlaneThrough).WithBody(BodyStyle);
        bolt = ShankDiameter is { } shank ? bolt.WithShankDiameter(shank) : bolt;
        return NeckDiameter is { } neck ? bolt.WithNeckDiameter(neck) : bolt;
    }

    private FastenerMaterial MaterialAt(ScrewThread thread) => Hardness is not null ? FastenerMaterial.OfMeasuredHardness(Hardness)
        : Material.Grade is { } grade && BoltLength is { } length ? FastenerMaterial.Graded(grade, thread, length)
        : Material.At(thread);

    private ShearBolt Marked(ShearBolt bolt, ScrewThread thread)
    {
        if (HeadMark is not { } mark)
        {
            return bolt;
        }

        if (Hardness is not null && Material.Grade is { } grade)
        {
            ShearBolt judged = bolt.WithMaterial(FastenerMaterial.Graded(grade, thread)).WithHeadMark(mark);
            return judged.Material.MarkConflict is null ? bolt.WithHeadMark(mark) : judged;
        }

        return bolt.WithHeadMark(mark);
    }

    /// <summary>It again, to be filled by one owner: until it is closed, each change is made in this very object.</summary>
    internal StatedBolt Open()
    {
        var open = (StatedBolt)MemberwiseClone();
        open.isOpen = true;
        return open;
    }

    internal StatedBolt Closed()
    {
        isOpen = false;
        return this;
    }

    private StatedBolt Changed<T>(T value, Action<StatedBolt, T> change)
    {
        StatedBolt changed = isOpen ? this : (StatedBolt)MemberwiseClone();
        change(changed, value);
        changed.conflicts = null;
        changed.built = null;
        return changed;
    }
}
