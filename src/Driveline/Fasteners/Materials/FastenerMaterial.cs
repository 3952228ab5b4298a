using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>
/// What a shear bolt or pin is made of, as far as it is known: a grade at a size, a measured hardness, a rod material, unmarked, or not
/// known.
/// </summary>
public sealed partial class FastenerMaterial : IEquatable<FastenerMaterial>
{
    private FastenerMaterial(
        string name, MaterialFamily family, ShearClass shearClass, StressBand? tensile, bool isIdentified, BoltGrade? grade,
            RodMaterial? rod,
        HeadMarkConflict? conflict)
    {
        Name = name;
        Family = family;
        ShearClass = shearClass;
        Tensile = tensile;
        IsIdentified = isIdentified;
        Grade = grade;
        RodMaterial = rod;
        MarkConflict = conflict;
    }

    /// <summary>Nothing is known: no strength, which never counts as safe.</summary>
    public static FastenerMaterial NotKnown { get; } = new(
        "not known", MaterialFamily.NotKnown, ShearClass.NotKnown, null, false, null, null, null);

    /// <summary>An inch bolt without a grade mark: all it may be.</summary>
    /// <remarks>
    /// Low: the lowest specified minimum among inch fasteners that often carry no mark (ASTM A307 C, 58 ksi = 400 MPa). Expected: the
    /// middle of HRB 70 to 100, which grades 1 and 2 share (565 MPa). High: unbounded, because nothing assures a maximum.
    /// </remarks>
    public static FastenerMaterial UnmarkedInchBolt { get; } =
        Unmarked("unmarked inch bolt", AstmBolts.A307C.Ranges[0].Strength, SaeJ429.Grade1.Ranges[0].Strength);

    /// <summary>A metric bolt without a class mark: all it may be.</summary>
    /// <remarks>
    /// Low: the specified minimum of class 3.6, which old stock may be (330 MPa). Expected: the middle of HV 120 to 220, which classes
    /// 4.6 to 5.8 share (545 MPa). High: unbounded, because nothing assures a maximum.
    /// </remarks>
    public static FastenerMaterial UnmarkedMetricBolt { get; } =
        Unmarked("unmarked metric bolt", Iso898.Class3_6.Ranges[0].Strength, Iso898.Class4_6.Ranges[0].Strength);

    /// <summary>Name for people, e.g. "SAE 5", "unmarked inch bolt", "HRC 28".</summary>
    public string Name { get; }

    /// <summary>Kind of metal.</summary>
    internal MaterialFamily Family { get; }

    /// <summary>Which shear-to-tensile ratio applies.</summary>
    public ShearClass ShearClass { get; }

    /// <summary>Tensile strength; null when nothing is known.</summary>
    public StressBand? Tensile { get; }

    /// <summary>The grade, for a graded bolt; else null.</summary>
    public BoltGrade? Grade { get; }

    /// <summary>The rod material, for a rod; else null.</summary>
    internal RodMaterial? RodMaterial { get; }

    /// <summary>True for a grade, a measured hardness or a named rod material; false for unmarked and not known.</summary>
    public bool IsIdentified { get; }

    /// <summary>What the marks on the head and the thread do not agree with; null when nothing contradicts.</summary>
    internal HeadMarkConflict? MarkConflict { get; }

    /// <summary>A bolt of which only the head marks are known: all that they may mean.</summary>
    /// <remarks>
    /// The lowest low and the highest high of the candidates of <see cref="HeadMark.Identify"/>, unbounded when
    /// one of them is; expected is the likeliest. No mark is an unmarked bolt; a mark that is not held here is not known.
    /// </remarks>
    /// <example>Three radial lines at 1/2-13 UNC: SAE 5, 5.1, 5.2, ASTM A449 or A325; at least 827 MPa.</example>
    public static FastenerMaterial Marked(HeadMark mark, ScrewThread thread) =>
        MarkedMaterial.Of(Guard.NotNull(mark, nameof(mark)), Guard.NotNull(thread, nameof(thread)));

    /// <summary>A bolt of a grade at a size.</summary>
    /// <exception cref="ArgumentException">The standard does not hold the grade at that size.</exception>
    public static FastenerMaterial Graded(BoltGrade grade, ScrewThread thread)
    {
        Guard.NotNull(grade, nameof(grade));
        return OfGrade(grade, grade.At(thread));
    }

    /// <summary>A bolt of a grade at a size and length, see <see cref="BoltGrade.At(ScrewThread, UnitsNet.Length)"/>.</summary>
    /// <exception cref="ArgumentException">The standard does not hold the grade there.</exception>
    public static FastenerMaterial Graded(BoltGrade grade, ScrewThread thread, UnitsNet.Length boltLength)
    {
        Guard.NotNull(grade, nameof(grade));
        return OfGrade(grade, grade.At(thread, boltLength));
    }

    /// <summary>A steel fastener whose hardness was measured.</summary>
    /// <remarks>
    /// From 780 MPa expected the steel is taken as quenched and tempered, with the class nearest in strength. Below, hardness cannot tell
    /// soft from cold-worked steel, so the shear class is <see cref="ShearClass.NotKnown"/> and the widest ratio applies. Measure the core,
    /// on a
    /// cut and ground end: a plated, decarburised or case-hardened surface reads otherwise.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The conversion tables do not reach the reading.</exception>
    public static FastenerMaterial OfMeasuredHardness(Hardness hardness)
    {
        StressBand tensile = Guard.NotNull(hardness, nameof(hardness)).ToTensile();
        double mpa = tensile.SiBand.Expected / 1e6;
        bool quenched = mpa >= 780;
        ShearClass shearClass = !quenched ? ShearClass.NotKnown
            : mpa < 970 ? ShearClass.Quenched88
            : mpa < 1080 ? ShearClass.Quenched98
            : mpa < 1260 ? ShearClass.Quenched109
            : ShearClass.Quenched129;
        return new FastenerMaterial(
            hardness.ToString(), quenched ? MaterialFamily.QuenchedSteel : MaterialFamily.NotKnown, shearClass, tensile, true, null, null,
                null);
    }

    /// <summary>A rod or bolt of a named material.</summary>
    internal static FastenerMaterial Rod(RodMaterial material)
    {
        Guard.NotNull(material, nameof(material));
        return new FastenerMaterial(
            material.Designation, material.Family, material.ShearClass, material.Tensile, true, null, material, null);
    }

    /// <summary>
    /// The material in a text: a grade, a hardness reading, a rod material, "unmarked" or "not known"; see <see cref="MaterialName"/>.
    /// </summary>
    /// <param name="text">E.g. "SAE 5", "8.8", "HRC 28", "6061-T6", "unmarked", "not known".</param>
    /// <param name="thread">The thread, which decides the strength of a grade and whether unmarked means inch or metric.</param>
    /// <exception cref="ArgumentException">
    /// The text names nothing held, or a grade not held at the size; the message says what is held.
    /// </exception>
    public static FastenerMaterial Parse(string text, ScrewThread thread) =>
        TryParse(text, thread, out FastenerMaterial? material, out string? problem)
        ? material!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The material in a text, or what is wrong with the text; see <see cref="Parse"/>.</summary>
    public static bool TryParse(
        string? text, ScrewThread thread, [NotNullWhen(true)] out FastenerMaterial? material, [NotNullWhen(false)] out string? problem)
    {
        Guard.NotNull(thread, nameof(thread));
        problem = MaterialName.TryParse(text, out MaterialName? name, out string? notRead) ? name!.ProblemAt(thread) : notRead;
        material = problem is null ? name!.At(thread) : null;
        return material is not null;
    }

    /// <summary>The same material judged by the marks on the head.</summary>
    /// <remarks>
    /// Marks that belong to it change nothing; no mark agrees with a grade that has none. Marks of another grade, or marks nobody knows
    /// beside a grade, leave open which it is: the band spans both, and the bolt is not identified. Nothing stated: see
    /// <see cref="Marked"/>.
    /// </remarks>
    public FastenerMaterial WithHeadMark(HeadMark mark, ScrewThread thread) =>
        MarkedMaterial.Judge(this, Guard.NotNull(mark, nameof(mark)), Guard.NotNull(thread, nameof(thread)));

    /// <inheritdoc/>
    public bool Equals(FastenerMaterial? other) =>
        other is not null && Name == other.Name && Equals(Tensile, other.Tensile) && (MarkConflict is null) == (other.MarkConflict is null);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FastenerMaterial);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    internal static FastenerMaterial OfMarks(
        string name, MaterialFamily family, ShearClass shearClass, StressBand? tensile, BoltGrade? grade, HeadMarkConflict? conflict) =>
            new(
        name, family, shearClass, tensile, conflict is null && (grade is not null || tensile is { IsBounded: true }), grade, null,
            conflict);

    private static FastenerMaterial OfGrade(BoltGrade grade, GradeStrength strength) =>
        new(grade.Designation, grade.Family, grade.ShearClass, strength.Tensile, true, grade, null, null);

    private static FastenerMaterial Unmarked(string name, GradeStrength weakest, GradeStrength likely)
    {
        Basis practice = Basis.CommonPractice("fasteners without a grade mark are mostly mild steel; nothing assures it");
        var band = new Band(weakest.Tensile.SiBand.Low, likely.Tensile.SiBand.Expected, double.PositiveInfinity);
        var basis = new BandBasis(
            Basis.Weakest(practice, weakest.Tensile.Basis.Low),
            Basis.Weakest(practice, likely.Tensile.Basis.Expected),
            practice,
            BandEnd.Interval95,
            BandEnd.Interval95);
        return new FastenerMaterial(
            name, MaterialFamily.NotKnown, ShearClass.NotKnown, StressBand.OfSi(band, basis), false, null, null, null);
    }
}
