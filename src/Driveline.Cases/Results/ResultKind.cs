namespace Driveline.Cases.Results;

/// <summary>The kinds of result that are written as JSON, each by the verb of the tool that gives it.</summary>
public enum ResultKind
{
    /// <summary>The verdict on a case.</summary>
    Assess = 0,

    /// <summary>The advice on a complaint.</summary>
    Advise,

    /// <summary>The choice of a bolt and of clutch settings.</summary>
    Choose,

    /// <summary>The review of a slip clutch.</summary>
    Clutch,

    /// <summary>A simulated engagement or strike.</summary>
    Simulate,

    /// <summary>What a bolt carries.</summary>
    Strength,

    /// <summary>What a head mark may mean.</summary>
    Identify,

    /// <summary>A study: many rows of one case.</summary>
    Sweep,

    /// <summary>What a log of torque and speeds shows.</summary>
    Watch,

    /// <summary>A run of a bare torsional model, which <c>simulate --model</c> gives.</summary>
    Transient,
}
