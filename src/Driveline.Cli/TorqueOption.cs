using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cli;

/// <summary>Reads a torque given as an option.</summary>
internal static class TorqueOption
{
    /// <summary>The torque.</summary>
    /// <param name="option">The option, for the message.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="BadInputException">It is no torque, or not above 0 up to 1000 kN·m.</exception>
    public static Torque Parse(string option, string text) => !QuantityText.TryParse<Torque>(text, out Torque torque, out string? problem)
        ? throw new BadInputException(option + ": " + problem)
        : torque.NewtonMeters is > 0 and <= 1e6
            ? torque
            : throw new BadInputException(option + " must be above 0 N.m, up to 1000 kN.m; got " + text + ".");
}
