using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>The rows that say which bolt it is; a fitted and a specified bolt both have them.</summary>
internal sealed class BoltRows
{
    public BoltRows(
        ParsedMember<ScrewThread> thread,
        ParsedMember<MaterialName> grade,
        ParsedMember<Hardness> hardness,
        QuantityMember<UnitsNet.Length> pinDiameter,
        ParsedMember<SpringPin> springPin,
        ChoiceMember<PlaneThrough> planeThrough,
        QuantityMember<UnitsNet.Length> neckDiameter)
    {
        Thread = thread;
        Grade = grade;
        Hardness = hardness;
        PinDiameter = pinDiameter;
        SpringPin = springPin;
        PlaneThrough = planeThrough;
        NeckDiameter = neckDiameter;
    }

    public ParsedMember<ScrewThread> Thread { get; }

    public ParsedMember<MaterialName> Grade { get; }

    public ParsedMember<Hardness> Hardness { get; }

    public QuantityMember<UnitsNet.Length> PinDiameter { get; }

    public ParsedMember<SpringPin> SpringPin { get; }

    public ChoiceMember<PlaneThrough> PlaneThrough { get; }

    public QuantityMember<UnitsNet.Length> NeckDiameter { get; }
}
