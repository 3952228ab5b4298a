using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

/// <summary>Short ways to the parts of a case.</summary>
internal static class CaseParts
{
    public static CaseObject Part(this CaseFile file, ObjectMember member) => file.Facts.Get(member)!;

    public static CaseObject Element(this CaseFile file, int index) => file.Facts.Get(CaseFileMembers.Driveline)[index];

    public static CaseObject Bolt(this CaseFile file, int index) => file.Element(index).Get(ElementMembers.ShearBolt)!;
}
