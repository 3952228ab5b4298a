using Driveline.Fasteners;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>A bolt or pin that parts in shear to save a driveline: what it is, and where the shear plane cuts it.</summary>
/// <remarks>Immutable. What is not told stays not known and widens the band; a maker's special is never silently a plain bolt.</remarks>
public sealed class ShearBolt
{
    internal const double LeastShank = 0.8;
    internal const double MostShank = 1.06;

    // The least tolerance that standards leave to the hole of a spring pin (H12 at 3 to 6 mm).
    private const double SpringPinSlackM = 0.12e-3;

    private readonly double plainM;
    private readonly double neckM;

    private ShearPlane? plane;

    private ShearBolt(
        ScrewThread? thread, FastenerMaterial material, PlaneThrough plane, double plainM, double neckM, BodyStyle body,
            SpringPin? springPin, bool isSpecial, double shankM = 0)
    {
        ShankM = shankM;
        Thread = thread;
        Material = material;
        PlaneThrough = plane;
        this.plainM = plainM;
        this.neckM = neckM;
        BodyStyle = body;
        FittedSpringPin = springPin;
        IsSpecial = isSpecial;
    }

    /// <summary>One plane of it, computed when it is first asked for.</summary>
    internal ShearPlane Plane => plane ??= ShearPlane.Computed(this);

    /// <summary>Its thread; null for a plain pin.</summary>
    public ScrewThread? Thread { get; }

    /// <summary>What it is made of, as far as it is known.</summary>
    public FastenerMaterial Material { get; }

    /// <summary>Which part the shear plane cuts.</summary>
    public PlaneThrough PlaneThrough { get; }

    /// <summary>Style of body, which decides how thick the plain shank may be.</summary>
    public BodyStyle BodyStyle { get; }

    /// <summary>Measured diameter of the plain shank; null when not measured.</summary>
    public Length? ShankDiameter => ShankM > 0 ? Length.FromMeters(ShankM) : null;

    /// <summary>The spring pin it is; null for anything else.</summary>
    public SpringPin? FittedSpringPin { get; }

    /// <summary>True for a maker's special with a neck, step or taper.</summary>
    public bool IsSpecial { get; }

    /// <summary>Nominal diameter: of the thread, the rod or the pin.</summary>
    public Length Diameter => Length.FromMeters(DiameterM);

    /// <summary>Diameter in the shear plane of a neck, step or taper; null when not told or not needed.</summary>
    public Length? NeckDiameter => neckM > 0 ? Length.FromMeters(neckM) : null;

    /// <summary>The grade of the bolt; null when it has none or it is not known.</summary>
    public BoltGrade? Grade => Material.Grade;

    internal double DiameterM => Thread?.MajorDiameterM ?? plainM;

    internal double NeckDiameterM => neckM;

    internal double ShankM { get; }

    /// <summary>The hole it normally gets, m: a plain pin that of a metric bolt as thick, a spring pin one of its own size.</summary>
    internal double NormalHoleM => Thread is { } thread ? ClearanceHoles.NormalM(thread)
        : FittedSpringPin is null ? ClearanceHoles.NormalForPinM(plainM)
        : plainM + SpringPinSlackM;

    /// <summary>The widest hole in which it is still a fit, m.</summary>
    internal double LooseHoleM => Thread is { } thread ? ClearanceHoles.LooseM(thread) : ClearanceHoles.LooseForPinM(plainM);

    /// <summary>Its size in words: a thread, "pin 8 mm", the standard and size of a spring pin.</summary>
    internal string SizeName => FittedSpringPin is { } spring ? spring.Standard + " " + spring.Size
        : Thread?.Designation ?? "pin " + PinSize(DiameterM);

    /// <summary>Its grade or material in words.</summary>
    internal string MaterialName => FittedSpringPin?.Material ?? Material.Name;

    internal bool NeedsNeck => PlaneThrough is PlaneThrough.Neck or PlaneThrough.Step or PlaneThrough.Taper;

    /// <summary>A bolt of a thread and grade. The shear plane is not known until it is told.</summary>
    /// <exception cref="ArgumentException">The grade's standard does not hold that size.</exception>
    public static ShearBolt Of(ScrewThread thread, BoltGrade grade) => Of(
        thread, FastenerMaterial.Graded(Guard.NotNull(grade, nameof(grade)), Guard.NotNull(thread, nameof(thread))));

    /// <summary>A bolt of a thread and any material: a grade, a measured hardness, unmarked, or not known.</summary>
    public static ShearBolt Of(ScrewThread thread, FastenerMaterial material) => new(
        Guard.NotNull(thread, nameof(thread)), Guard.NotNull(material, nameof(material)), PlaneThrough.NotKnown, 0, 0, BodyStyle.NotKnown,
            null, false);

    /// <summary>A plain rod or pin: its shear plane cuts the full section.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is zero, negative or not finite.</exception>
    public static ShearBolt Pin(Length diameter, FastenerMaterial material) => new(
        null,
        Guard.NotNull(material, nameof(material)),
        PlaneThrough.Shank,
        Guard.Positive(Si.Meters(diameter), "Pin diameter", "m", nameof(diameter)),
        0,
        BodyStyle.NotKnown,
        null,
        false);

    /// <summary>A spring pin, known by its published minimum double-shear load. Nothing assures a maximum.</summary>
    public static ShearBolt SpringPin(SpringPin pin) => new(
        null, FastenerMaterial.NotKnown, PlaneThrough.Shank, Guard.NotNull(pin, nameof(pin)).DiameterM, 0, BodyStyle.NotKnown, pin, false);

    /// <summary>A maker's special: a bolt weakened by a neck, step or taper.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="neckStepOrTaper">Which of the three.</param>
    /// <param name="neckDiameter">Measured diameter in the shear plane; null when not known: then no low end is known.</param>
    /// <param name="hardness">Measured hardness; null when not known: then nothing bounds its strength.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The plane is none of the three, or the neck is not between 0 and the thread's diameter.
    /// </exception>
    public static ShearBolt Special(ScrewThread thread, PlaneThrough neckStepOrTaper, Length? neckDiameter, Hardness? hardness)
    {
        Guard.NotNull(thread, nameof(thread));
        if (neckStepOrTaper is not (PlaneThrough.Neck or PlaneThrough.Step or PlaneThrough.Taper))
        {
            throw new ArgumentOutOfRangeException(
                nameof(neckStepOrTaper), "A special's shear plane must be Neck, Step or Taper; got " + neckStepOrTaper + ".");
        }

        FastenerMaterial material = hardness is null ? FastenerMaterial.NotKnown : FastenerMaterial.OfMeasuredHardness(hardness);
        var special = new ShearBolt(thread, material, neckStepOrTaper, 0, 0, BodyStyle.NotKnown, null, true);
        return neckDiameter is { } neck ? special.WithNeckDiameter(neck) : special;
    }

    /// <summary>The same bolt with the shear plane through the given part.</summary>
    /// <remarks>When its planes cut different parts, thread on one side and shank on the other, leave the plane not known.</remarks>
    /// <exception cref="ArgumentException">
    /// A pin without thread cannot be cut through a thread; a spring pin has one section only.
    /// </exception>
    public ShearBolt With(PlaneThrough plane)
    {
        if (FittedSpringPin is not null && plane != PlaneThrough.Shank)
        {
            throw new ArgumentException("A spring pin's shear plane must be Shank: it has one section; got " + plane + ".", nameof(plane));
        }

        if (Thread is null && (plane is PlaneThrough.Thread or PlaneThrough.NotKnown))
        {
            throw new ArgumentException(
                "A pin's shear plane must be Shank, Neck, Step or Taper: it has no thread; got " + plane + ".", nameof(plane));
        }

        return new ShearBolt(Thread, Material, plane, plainM, neckM, BodyStyle, FittedSpringPin, IsSpecial, ShankM);
    }

    /// <summary>
    /// The same bolt with a diameter in the shear plane of its neck, step or taper; while the plane is not known, the neck widens the band.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 and at most the nominal diameter.</exception>
    /// <exception cref="InvalidOperationException">The bolt is a spring pin.</exception>
    public ShearBolt WithNeckDiameter(Length neckDiameter)
    {
        RefuseSpringPin("has no neck");
        double neck = Guard.Positive(Si.Meters(neckDiameter), "Neck diameter", "m", nameof(neckDiameter));
        return neck <= DiameterM * (1 + 1e-9)
            ? new ShearBolt(Thread, Material, PlaneThrough, plainM, neck, BodyStyle, FittedSpringPin, IsSpecial, ShankM)
            : throw Guard.OutOfRange(
                "Neck diameter", FormattableString.Invariant($"at most the nominal diameter {DiameterM:G6} m"), neck, "m",
                    nameof(neckDiameter));
    }

    /// <summary>The same bolt with a known style of body, which narrows how thick its shank may be.</summary>
    public ShearBolt WithBody(BodyStyle style) =>
        new(Thread, Material, PlaneThrough, plainM, neckM, style, FittedSpringPin, IsSpecial, ShankM);

    /// <summary>The same bolt with the measured diameter of its plain shank, which stands in place of what its standard allows.</summary>
    /// <param name="diameter">0.8 to 1.06 times the nominal diameter: a rolled thread has a thinner shank, a square neck a thicker
    /// one.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of that range.</exception>
    /// <exception cref="InvalidOperationException">It has no thread.</exception>
    public ShearBolt WithShankDiameter(Length diameter)
    {
        double nominal = Thread?.MajorDiameterM
            ?? throw new InvalidOperationException("Only a bolt with a thread has a shank; got " + this + ".");
        double m = Guard.Within(Si.Meters(diameter), LeastShank * nominal, MostShank * nominal, "Shank diameter", "m", nameof(diameter));
        return new ShearBolt(Thread, Material, PlaneThrough, plainM, neckM, BodyStyle, FittedSpringPin, IsSpecial, m);
    }

    /// <summary>The same bolt of another material or grade.</summary>
    /// <exception cref="InvalidOperationException">The bolt is a spring pin.</exception>
    public ShearBolt WithMaterial(FastenerMaterial material)
    {
        RefuseSpringPin("is known by its load, not by its material");
        return new ShearBolt(Thread, Guard.NotNull(material, nameof(material)), PlaneThrough, plainM, neckM, BodyStyle, null, IsSpecial,
            ShankM);
    }

    /// <summary>The same bolt judged by the marks on its head, see <see cref="FastenerMaterial.WithHeadMark"/>.</summary>
    /// <remarks>A maker's special without a measured hardness stays not known: its marks do not tell how strong its neck is.</remarks>
    /// <exception cref="InvalidOperationException">It has no thread, so no head whose marks are held.</exception>
    public ShearBolt WithHeadMark(HeadMark mark)
    {
        Guard.NotNull(mark, nameof(mark));
        ScrewThread thread = Thread ?? throw new InvalidOperationException("Head marks need a bolt with a thread; got " + this + ".");
        return IsSpecial && !Material.IsIdentified ? this : WithMaterial(Material.WithHeadMark(mark, thread));
    }

    /// <summary>The bolt in a few words, e.g. "1/2-13 UNC SAE 2", "pin 8 mm HRC 28", "pin 5/16 in 6061-T6 aluminium rod".</summary>
    public override string ToString() => FittedSpringPin is not null
        ? FittedSpringPin.ToString()
        : SizeName + " " + Material.Name;

    // A diameter that is a fraction of an inch as shops carry it, by 1/64 in, is called so.
    private static string PinSize(double meters)
    {
        double parts = Math.Round(meters / Si.Inch * 64);
        if (Math.Abs(meters - (parts / 64 * Si.Inch)) > 1e-8)
        {
            return FormattableString.Invariant($"{meters * 1000:G4} mm");
        }

        int divisor = 64;
        int top = (int)parts;
        while (top % 2 == 0 && divisor > 1)
        {
            top /= 2;
            divisor /= 2;
        }

        string whole = top >= divisor ? FormattableString.Invariant($"{top / divisor}") : string.Empty;
        string fraction = top % divisor > 0 ? FormattableString.Invariant($"{top % divisor}/{divisor}") : string.Empty;
        return (whole + " " + fraction).Trim() + " in";
    }

    private void RefuseSpringPin(string why)
    {
        if (FittedSpringPin is not null)
        {
            throw new InvalidOperationException("Spring pin " + FittedSpringPin + " " + why + ".");
        }
    }
}
