using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>What must hold between the parts of a model: names, references, one tree.</summary>
internal static class ModelChecks
{
    public static void Across(CaseObject draft, CaseWalk walk)
    {
        var parts = new ModelParts(draft);
        Names(parts, walk);
        bool isWhole = References(parts, walk);
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

    private static bool References(ModelParts parts, CaseWalk walk)
    {
        bool isGood = true;
        foreach (ModelPart link in parts.Shafts.Concat(parts.Couplings))
        {
            (TextMember from, TextMember to) = Ends(link);
            isGood &= Reference(parts, walk, link, from) & Reference(parts, walk, link, to);
            if (link.Draft.Get(from) is { } name && name == link.Draft.Get(to))
            {
                isGood = false;
                link.Say(walk, to, "\"from\" and \"to\" must be two rotors; both are \"" + CaseWalk.Shown(name) + "\".");
            }
        }

        foreach (ModelPart load in parts.Loads)
        {
            Reference(parts, walk, load, ModelLoadMembers.Rotor);
            Free(parts, walk, load, ModelLoadMembers.Rotor, !load.Draft.IsStated(ModelLoadMembers.Viscous));
        }

        foreach (ModelPart obstacle in parts.Obstacles)
        {
            Reference(parts, walk, obstacle, ModelObstacleMembers.Rotor);
            Free(parts, walk, obstacle, ModelObstacleMembers.Rotor, true);
        }

        if (parts.Drive is { } drive && drive.Get(ModelDriveMembers.Rotor) is { } driven)
        {
            walk.Enter(ModelMembers.Drive.Name);
            walk.Enter(ModelDriveMembers.Rotor.Name);
            Known(parts, walk, driven, drive.OffsetOf(ModelDriveMembers.Rotor));
            walk.Leave();
            walk.Leave();
        }

        return isGood;
    }

    internal static (TextMember From, TextMember To) Ends(ModelPart link) => link.List == ModelMembers.Shafts
        ? (ModelShaftMembers.From, ModelShaftMembers.To)
        : (ModelCouplingMembers.From, ModelCouplingMembers.To);

    private static bool Reference(ModelParts parts, CaseWalk walk, ModelPart part, TextMember member)
    {
        string? name = part.Draft.Get(member);
        if (name is null || parts.Rotor(name) is not null)
        {
            return name is not null;
        }

        string[] known = parts.Rotors.Select(r => r.Name).OfType<string>().ToArray();
        part.Say(walk, member, NoRotor(name, known), string.Join(", ", known), CaseWalk.Shown(name), NearestName.Of(name, known));
        return false;
    }

    private static void Free(ModelParts parts, CaseWalk walk, ModelPart part, TextMember member, bool needed)
    {
        if (needed && parts.Rotor(part.Draft.Get(member)) is { } rotor && ModelParts.IsHeld(rotor))
        {
            part.Say(walk, member, "\"" + CaseWalk.Shown(rotor.Name!) + "\" is held at its speed; this has no effect there.");
        }
    }

    private static void Known(ModelParts parts, CaseWalk walk, string name, long offset)
    {
        string[] known = parts.Rotors.Where(r => !ModelParts.IsHeld(r)).Select(r => r.Name).OfType<string>().ToArray();
        if (Array.IndexOf(known, name) < 0)
        {
            string message = parts.Rotor(name) is null ? NoRotor(name, known)
                : "\"" + CaseWalk.Shown(name) + "\" is held at its speed; this has no effect there.";
            walk.Error(CaseErrorKind.Contradiction, offset, message, string.Join(", ", known), CaseWalk.Shown(name),
                NearestName.Of(name, known));
        }
    }

    private static string NoRotor(string name, string[] known) => "There is no rotor \"" + CaseWalk.Shown(name) + "\"; there are: "
        + (known.Length == 0 ? "none" : CaseWalk.Shown(string.Join(", ", known))) + ".";

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
            Known(parts, walk, speed.Name, speed.Offset);
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
