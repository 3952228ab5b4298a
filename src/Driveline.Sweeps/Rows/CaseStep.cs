using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>A step of a path: a member, and the place in its list when it is one.</summary>
internal readonly record struct CaseStep(Member Member, int Index);
