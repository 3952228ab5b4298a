using Driveline.Cases.Members;
using Driveline.Fasteners;

namespace Driveline.Cases;

/// <content>What the texts mean.</content>
public sealed partial class ShearBoltFacts
{
    /// <summary>The thread that <see cref="Thread"/> names; null when none is stated.</summary>
    public ScrewThread? ParsedThread => BoltTexts.Thread(Thread);

    /// <summary>The bolt grade that <see cref="Grade"/> names; null for a rod material, an unmarked bolt, or when none is stated.</summary>
    public BoltGrade? ParsedGrade => BoltTexts.Grade(Grade);

    /// <summary>The rod material that <see cref="Grade"/> names; null when it names none.</summary>
    public RodMaterial? ParsedRodMaterial => BoltTexts.Rod(Grade);

    /// <summary>True when <see cref="Grade"/> says that the bolt has no marks.</summary>
    public bool IsUnmarked => BoltTexts.IsUnmarked(Grade);

    /// <summary>The mark that <see cref="HeadMarks"/> describes; null when none is stated.</summary>
    public HeadMark? ParsedHeadMark => BoltTexts.HeadMark(HeadMarks);

    /// <summary>The reading that <see cref="Hardness"/> states; null when none is stated.</summary>
    public Hardness? ParsedHardness => BoltTexts.Hardness(Hardness);

    /// <summary>The pin that <see cref="SpringPin"/> names; null when none is stated.</summary>
    public SpringPin? ParsedSpringPin => BoltTexts.SpringPin(SpringPin);
}
