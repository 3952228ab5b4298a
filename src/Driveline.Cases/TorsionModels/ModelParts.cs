using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>All parts of a model while it is read.</summary>
internal sealed class ModelParts
{
    public const string DriveName = "drive";

    public ModelParts(CaseObject model)
    {
        Model = model;
        Rotors = ModelPart.All(model, ModelMembers.Rotors, ModelRotorMembers.Name, string.Empty);
        Shafts = ModelPart.All(model, ModelMembers.Shafts, ModelShaftMembers.Name, string.Empty);
        Couplings = ModelPart.All(model, ModelMembers.Couplings, ModelCouplingMembers.Name, string.Empty);
        Loads = ModelPart.All(model, ModelMembers.Loads, ModelLoadMembers.Name, "load");
        Obstacles = ModelPart.All(model, ModelMembers.Obstacles, ModelObstacleMembers.Name, "obstacle");
        Drive = model.Get(ModelMembers.Drive);
        Start = model.Get(ModelMembers.Start);
    }

    public CaseObject Model { get; }

    public IReadOnlyList<ModelPart> Rotors { get; }

    public IReadOnlyList<ModelPart> Shafts { get; }

    public IReadOnlyList<ModelPart> Couplings { get; }

    public IReadOnlyList<ModelPart> Loads { get; }

    public IReadOnlyList<ModelPart> Obstacles { get; }

    public CaseObject? Drive { get; }

    public CaseObject? Start { get; }

    /// <summary>The rotor of that name; null when there is none.</summary>
    public ModelPart? Rotor(string? name) => name is null ? null : Rotors.FirstOrDefault(r => r.Name == name);

    public static bool IsHeld(ModelPart rotor) => rotor.Draft.IsStated(ModelRotorMembers.HeldAt);
}
