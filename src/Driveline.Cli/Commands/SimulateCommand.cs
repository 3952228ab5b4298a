using System.CommandLine;

namespace Driveline.Cli.Commands;

/// <summary>simulate: what really happens in time.</summary>
internal static class SimulateCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var model = new Option<string?>("--model") { Description = "A torsional model (*.model.json) to run; - reads standard input.", HelpName = "MODEL" };
        var command = new Command("simulate", "Computes torques and speeds in time: a torsional model of rotors, shafts, couplings and obstacles.") { model };
        command.SetAction(parsed => parsed.GetValue(model) is { } path
            ? SimulateModel.Run(path, parsed, terminal, shared)
            : throw new BadInputException("simulate needs --model MODEL. See 'driveline simulate --help'."));
        return command;
    }
}
