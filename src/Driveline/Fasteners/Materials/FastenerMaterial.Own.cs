using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <content>Materials that the caller brings: a grade that is not held here, or the certificate of a batch.</content>
public sealed partial class FastenerMaterial
{
    private const double LeastTensilePa = 50e6;
    private const double MostTensilePa = 3000e6;

    // What a batch may hold to each side of the one test on its certificate.
    private const double BatchSpread = 0.05;

    private static readonly Basis Batch = Basis.CommonPractice("bolts of one batch lie within about 5 % of the value on its certificate");

    /// <summary>A grade or material of the caller's own, with the tensile strength it promises.</summary>
    /// <remarks>A grade without a maximum is a band that is open upward: it never gives a Yes that a part is protected.</remarks>
    /// <param name="name">Its name, for people; none that is held here, since that would change what a printed grade means.</param>
    /// <param name="behavesLike">Which ratio of shear to tensile strength applies; NotKnown takes the widest.</param>
    /// <param name="tensile">Tensile strength, from 50 to 3000 MPa at its low end, with the basis of each end.</param>
    /// <exception cref="ArgumentException">The name is blank, or is held here.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strength is out of its range, or the shear class is none.</exception>
    /// <example>"plow bolt, house grade", like ISO 4.8, 420 to 560 MPa, given by the maker's sheet.</example>
    public static FastenerMaterial Own(string name, ShearClass behavesLike, StressBand tensile)
    {
        Guard.NotBlank(name, "Name of a material", nameof(name));
        if (MaterialName.TryParse(name, out _, out _))
        {
            throw new ArgumentException(
                "Name of a material must be none that is held here, whose strength is printed elsewhere; got \"" + name + "\".",
                nameof(name));
        }

        Band si = Guard.NotNull(tensile, nameof(tensile)).SiBand;
        Guard.Within(si.Low / 1e6, LeastTensilePa / 1e6, MostTensilePa / 1e6, "Lowest tensile strength", "MPa", nameof(tensile));
        if (si.IsBounded)
        {
            Guard.Within(si.High / 1e6, LeastTensilePa / 1e6, MostTensilePa / 1e6, "Highest tensile strength", "MPa", nameof(tensile));
        }

        return new FastenerMaterial(name, FamilyOf(behavesLike), behavesLike, tensile, true, null, null, null);
    }

    /// <summary>A bolt of a batch whose tensile strength was tested, as its certificate says.</summary>
    /// <remarks>Expected is the tested value; low and high lie 5 % to each side (95 % interval, common practice).</remarks>
    /// <param name="certificate">The document, e.g. "certificate 3.1, heat 47113"; it becomes the basis of the number.</param>
    /// <param name="behavesLike">Which ratio of shear to tensile strength applies; NotKnown takes the widest.</param>
    /// <param name="tensile">The tested tensile strength, about 53 to 2857 MPa, so that the band lies within 50 to 3000 MPa.</param>
    /// <exception cref="ArgumentException">The certificate is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strength is out of its range, or the shear class is none.</exception>
    /// <example>Tested at 600 MPa: 570 to 630 MPa, expected 600 MPa.</example>
    public static FastenerMaterial Certified(string certificate, ShearClass behavesLike, Pressure tensile)
    {
        Basis tested = Basis.Given(Guard.NotBlank(certificate, "Certificate", nameof(certificate)));
        double pa = Guard.Positive(Si.Pascals(tensile), "Tested tensile strength", "Pa", nameof(tensile));
        Basis ends = Basis.Weakest(tested, Batch);
        var basis = new BandBasis(ends, tested, ends, BandEnd.Interval95, BandEnd.Interval95);
        return Own(certificate, behavesLike, StressBand.OfSi(new Band(pa * (1 - BatchSpread), pa, pa * (1 + BatchSpread)), basis));
    }

    private static MaterialFamily FamilyOf(ShearClass shearClass) => shearClass switch
    {
        ShearClass.NotKnown => MaterialFamily.NotKnown,
        ShearClass.Soft46 or ShearClass.Soft56 or ShearClass.BarSteel => MaterialFamily.MildSteel,
        ShearClass.ColdWorked48 or ShearClass.ColdWorked58 or ShearClass.ColdWorked68 or ShearClass.ColdHeaded =>
            MaterialFamily.ColdWorkedMildSteel,
        ShearClass.Quenched88 or ShearClass.Quenched98 or ShearClass.Quenched109 or ShearClass.Quenched129 => MaterialFamily.QuenchedSteel,
        ShearClass.Stainless => MaterialFamily.StainlessSteel,
        ShearClass.Aluminium => MaterialFamily.AluminiumAlloy,
        ShearClass.Copper => MaterialFamily.CopperAlloy,
        _ => throw new ArgumentOutOfRangeException(nameof(shearClass), shearClass, "Shear class must be one that is listed."),
    };
}
