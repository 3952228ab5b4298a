using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>What must hold between the parts of a model: names, references, one tree.</summary>
internal static class ModelChecks
{
    public static void Across(CaseObject draft, CaseWalk walk)
    {
        var parts = new ModelParts(draft);
        Names(parts, walk);
        bool isWhole = ModelReferences.Check(parts, walk);
        Count(parts, walk);
        if (isWhole)
        {
            ModelTree.Check(parts, walk);
        }

        Start(parts, walk);
    }

    private static void Names(ModelParts parts, CaseWalk walk)
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        if (parts.Drive is { } drive)
        {
            seen.Add(drive.Get(ModelDriveMembers.Name) ?? ModelParts.DriveName, "the drive");
        }

        foreach (ModelPart part in parts.Rotors.Concat(parts.Shafts).Concat(parts.Couplings).Concat(parts.Loads).Concat(parts.Obstacles))
        {
            if (part.Name is not { } name)
            {
                continue;
            }

            if (seen.TryGetValue(name, out string? owner))
            {
                part.Say(walk, part.NameMember, "\"" + CaseWalk.Shown(name) + "\" is the name of " + owner
                    + " already; every name in the model is used once.", null, CaseWalk.Shown(name), null);
            }
            else
            {
                seen.Add(name, "a " + part.Draft.Table.Name);
            }
        }
    }

    private static void Count(ModelParts parts, CaseWalk walk)
    {
        CaseObject model = parts.Model;
        int count = model[ModelMembers.Rotors] is null ? 2 : model.Get(ModelMembers.Rotors).Count;
        if (count < 2)
        {
            walk.Contradiction(
                model, ModelMembers.Rotors, FormattableString.Invariant(
                $"A model must have at least 2 rotors; got {count}. A fixed end is a rotor with \"heldAt\": 0."));
        }
        else if (parts.Rotors.Count > 0 && parts.Rotors.All(ModelParts.IsHeld))
        {
            walk.Contradiction(model, ModelMembers.Rotors, "At least one rotor must be free to move; all are held at their speeds.");
        }
    }

    private static void Start(ModelParts parts, CaseWalk walk)
    {
        if (parts.Start is not { } start)
        {
            return;
        }

        walk.Enter(ModelMembers.Start.Name);
        foreach (NamedQuantity speed in start.Get(ModelStartMembers.Speeds) ?? [])
        {
            walk.Enter(ModelStartMembers.Speeds.Name);
            walk.Enter(speed.Name);
            ModelReferences.Known(parts, walk, speed.Name, speed.Offset);
            walk.Leave();
            walk.Leave();
        }

        string[] shafts = parts.Shafts.Select(s => s.Name).OfType<string>().ToArray();
        foreach (NamedQuantity torque in start.Get(ModelStartMembers.Torques) ?? [])
        {
            if (Array.IndexOf(shafts, torque.Name) < 0)
            {
                string names = CaseWalk.Shown(string.Join(", ", shafts));
                walk.Enter(ModelStartMembers.Torques.Name);
                walk.Enter(torque.Name);
                walk.Error(
                    CaseErrorKind.Contradiction,
                    torque.Offset,
                    "There is no shaft \"" + CaseWalk.Shown(torque.Name) + "\"; there are: " + (shafts.Length == 0 ? "none" : names) + ".",
                    names,
                    CaseWalk.Shown(torque.Name),
                    NearestName.Of(torque.Name, shafts));
                walk.Leave();
                walk.Leave();
            }
        }

        walk.Leave();
    }
}
