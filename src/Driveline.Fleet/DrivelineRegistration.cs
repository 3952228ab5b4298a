using System.Text;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fleet;

/// <summary>What a fleet must know of a driveline before its first batch. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.DrivelineRegistration")]
public sealed class DrivelineRegistration
{
    /// <summary>No case is longer, B.</summary>
    public const int MostCaseBytes = 262_144;

    private DrivelineRegistration(string caseJson, double periodS, double overloadNm, double speedRatio)
    {
        CaseJson = caseJson;
        PeriodS = periodS;
        OverloadNm = overloadNm;
        SpeedRatio = speedRatio;
    }

    /// <summary>The case file of the driveline.</summary>
    [Id(0)]
    public string CaseJson { get; }

    /// <summary>Speed behind over speed before the protection while it holds.</summary>
    [Id(1)]
    public double SpeedRatio { get; }

    [Id(2)]
    internal double PeriodS { get; }

    [Id(3)]
    internal double OverloadNm { get; }

    /// <summary>Time from sample to sample.</summary>
    public Duration SamplePeriod => Duration.FromSeconds(PeriodS);

    /// <summary>The overload level; null for the lowest torque at which the protection of the case may act.</summary>
    public Torque? Overload => double.IsNaN(OverloadNm) ? null : Torque.FromNewtonMeters(OverloadNm);

    /// <summary>A driveline with a case, whose protection gives the overload level.</summary>
    /// <param name="caseJson">A case file.</param>
    /// <param name="samplePeriod">Time from sample to sample; 10 µs to 1 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public static DrivelineRegistration Of(string caseJson, Duration samplePeriod)
    {
        ArgumentNullException.ThrowIfNull(caseJson);
        double periodS = Guard.Within(Si.Seconds(samplePeriod), 1e-5, 3600, "Period of samples", "s", nameof(samplePeriod));
        return new DrivelineRegistration(caseJson, periodS, double.NaN, 1);
    }

    /// <summary>The same with a stated overload level.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 to 10⁶ N·m.</exception>
    public DrivelineRegistration WithOverload(Torque level) =>
        new(CaseJson, PeriodS, Guard.Within(Si.NewtonMeters(level), 1e-3, 1e6, "Overload level", "N·m", nameof(level)), SpeedRatio);

    /// <summary>The same with a ratio of the speeds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 0.01 to 100.</exception>
    public DrivelineRegistration WithSpeedRatio(double ratio) =>
        new(CaseJson, PeriodS, OverloadNm, Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio)));

    /// <summary>The period of its samples and its overload level, with their units.</summary>
    public override string ToString() => FormattableString.Invariant($"every {PeriodS * 1000:G4} ms, overload from ")
        + (Overload is { } level ? FormattableString.Invariant($"{level.NewtonMeters:G4} N·m") : "what its case gives");

    internal byte[] ToBytes()
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write((byte)1);
        writer.Write(PeriodS);
        writer.Write(OverloadNm);
        writer.Write(SpeedRatio);
        writer.Write(Encoding.UTF8.GetBytes(CaseJson));
        writer.Flush();
        return stream.ToArray();
    }

    internal static DrivelineRegistration OfBytes(byte[] bytes)
    {
        using var reader = new BinaryReader(new MemoryStream(bytes));
        byte form = reader.ReadByte();
        if (form != 1)
        {
            throw new FleetStateException("Its registration is of form " + form + "; this silo reads form 1.");
        }

        double periodS = reader.ReadDouble(), overloadNm = reader.ReadDouble(), ratio = reader.ReadDouble();
        int head = (int)reader.BaseStream.Position;
        return new DrivelineRegistration(Encoding.UTF8.GetString(bytes, head, bytes.Length - head), periodS, overloadNm, ratio);
    }
}
