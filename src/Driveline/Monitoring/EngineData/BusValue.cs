namespace Driveline.Monitoring;

/// <summary>Values of parameters on the bus by the conventions of SAE J1939; NaN for what is no value.</summary>
/// <remarks>
/// One byte: 0 to 250 are values, 251 to 253 reserved, 254 an error, 255 not available. Two bytes: up to FAFF are values, FExx is an
/// error, FFxx not available. Basis: from memory, as the reference data mark it.
/// </remarks>
internal static class BusValue
{
    /// <summary>SPN 2978: the losses are already in the nominal friction.</summary>
    public const byte LossesInFriction = 251;

    private const byte HighestByte = 250;
    private const ushort HighestWord = 0xFAFF;

    /// <summary>A torque in percent of the reference torque: offset -125.</summary>
    public static double Percent(byte raw) => raw <= HighestByte ? raw - 125.0 : double.NaN;

    /// <summary>A speed, rad/s: 0.125 rpm a bit.</summary>
    public static double RadPerS(ushort raw) => raw <= HighestWord ? raw * 0.125 * Math.PI / 30 : double.NaN;

    /// <summary>A torque, N·m: 1 N·m a bit.</summary>
    public static double Nm(ushort raw) => raw <= HighestWord ? raw : double.NaN;

    public static bool IsError(byte raw) => raw == 0xFE;

    public static bool IsError(ushort raw) => raw >> 8 == 0xFE;
}
