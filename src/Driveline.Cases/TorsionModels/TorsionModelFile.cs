using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Cases.TorsionModels;

/// <summary>A torsional model read from a file: how it starts and how long it runs.</summary>
public sealed class TorsionModelFile
{
    internal TorsionModelFile(string? title, TorsionStart start, Duration duration)
    {
        Title = title;
        Start = start;
        Duration = duration;
    }

    /// <summary>Parts times steps after which a run gives up: one step of a model of 20 parts counts 20.</summary>
    public const int MostPartSteps = 20_000_000;

    /// <summary>What the model is, in one line; null when not stated.</summary>
    public string? Title { get; }

    /// <summary>The model and how it moves at 0 s.</summary>
    public TorsionStart Start { get; }

    /// <summary>How long the run lasts.</summary>
    public Duration Duration { get; }

    /// <summary>Its title and how long it runs.</summary>
    public override string ToString() => FormattableString.Invariant($"{Title ?? "a model"}, {Duration.Seconds:G4} s");

    /// <summary>Runs the model, with the torques in its springs, within <see cref="MostPartSteps"/> and 10 000 events.</summary>
    public TransientResult Run() => Run(CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public TransientResult Run(CancellationToken stop)
    {
        TorsionModel model = Start.Model;
        int steps = MostPartSteps / (model.Rotors.Count + model.Elements.Count);
        return Transient.RunWithSprings(Start, Duration, TransientLimits.Usual.WithSteps(steps).WithStop(stop), new TransientWorkspace());
    }
}
