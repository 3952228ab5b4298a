using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Results;

/// <summary>A bolt's strength with its shear loads and everything they rest on.</summary>
internal sealed class StrengthOfBolt
{
    public StrengthOfBolt(BoltStrength strength)
    {
        Strength = strength;
        ShearBolt bolt = ShearBolt.Of(strength.Thread, strength.Grade);
        Shank = ShearPlane.Of(bolt.With(PlaneThrough.Shank)).Load;
        Threaded = ShearPlane.Of(bolt.With(PlaneThrough.Thread)).Load;
        var all = new List<Basis>
        {
            strength.Thread.AreaBasis, strength.Thread.RootAreaBasis, strength.Strength.Basis, strength.MinimumTensileLoadBasis,
        };
        foreach (BandBasis band in new[] { strength.TensileLoad.Basis, Shank.Basis, Threaded.Basis })
        {
            all.AddRange([band.Low, band.Expected, band.High]);
        }

        Sources = [.. all.Distinct().OrderBy(b => b.Kind)];
    }

    public BoltStrength Strength { get; }

    /// <summary>Load that cuts one plane through the shank.</summary>
    public ForceBand Shank { get; }

    /// <summary>Load that cuts one plane through the thread.</summary>
    public ForceBand Threaded { get; }

    /// <summary>Every basis the numbers rest on, each once, the weakest first.</summary>
    public IReadOnlyList<Basis> Sources { get; }
}
