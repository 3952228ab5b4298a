using Driveline.Choosing;

namespace Driveline.Cases.Results;

/// <summary>A choice of bolts with the settings of the clutches beside them.</summary>
internal sealed class ChosenInCase
{
    public ChosenInCase(BoltChoice bolts, IReadOnlyList<ClutchChoice> settings)
    {
        Bolts = bolts;
        Settings = settings;
    }

    public BoltChoice Bolts { get; }

    public IReadOnlyList<ClutchChoice> Settings { get; }
}
