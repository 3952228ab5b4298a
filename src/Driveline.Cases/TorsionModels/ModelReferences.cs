using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The names by which the parts of a model refer to its rotors.</summary>
internal static class ModelReferences
{
    /// <summary>True when every shaft and coupling joins two rotors that there are.</summary>
    public static bool Check(ModelParts parts, CaseWalk walk)
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

    /// <summary>A rotor that there is and that is free to move.</summary>
    public static void Known(ModelParts parts, CaseWalk walk, string name, long offset)
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

    /// <summary>The members that name the two ends of a shaft or coupling.</summary>
    public static (TextMember From, TextMember To) Ends(ModelPart link) => link.List == ModelMembers.Shafts
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

    private static string NoRotor(string name, string[] known) => "There is no rotor \"" + CaseWalk.Shown(name) + "\"; there are: "
        + (known.Length == 0 ? "none" : CaseWalk.Shown(string.Join(", ", known))) + ".";
}
