using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Engine speed at which one tractor's PTO turns at its rated speed.</summary>
internal sealed class EngineSpeedRatio
{
    private readonly double enginePerMinute;
    private readonly double ptoPerMinute;

    private EngineSpeedRatio(double enginePerMinute, double ptoPerMinute, Basis basis)
    {
        this.enginePerMinute = enginePerMinute;
        this.ptoPerMinute = ptoPerMinute;
        Basis = basis;
    }

    /// <summary>The tractors held here: 540 min⁻¹ at 2400, 1970 and about 1700 (economy), 1000 min⁻¹ at 2120 and 1864.</summary>
    public static IReadOnlyList<EngineSpeedRatio> All { get; } = Array.AsReadOnly<EngineSpeedRatio>(
    [
        new(2400, 540, Basis.CommonPractice("repower article, an older tractor")),
        new(1970, 540, Basis.Published("operator manual, mid-range tractor", "undated", "PTO speeds")),
        new(2120, 1000, Basis.Published("operator manual, mid-range tractor", "undated", "PTO speeds")),
        new(1864, 1000, Basis.CommonPractice("gear maker's article on a PTO bench test")),
        new(1700, 540, Basis.CommonPractice("retail guide page, economy PTO")),
    ]);

    /// <summary>Engine speed.</summary>
    public RotationalSpeed EngineSpeed => RotationalSpeed.FromRevolutionsPerMinute(enginePerMinute);

    /// <summary>PTO speed.</summary>
    public RotationalSpeed PtoSpeed => RotationalSpeed.FromRevolutionsPerMinute(ptoPerMinute);

    /// <summary>Engine speed over PTO speed.</summary>
    /// <example>2400 and 540 min⁻¹: 4.444.</example>
    public double Ratio => enginePerMinute / ptoPerMinute;

    /// <summary>Where it comes from.</summary>
    public Basis Basis { get; }
}
