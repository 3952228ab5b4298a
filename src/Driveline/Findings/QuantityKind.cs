namespace Driveline.Findings;

/// <summary>What a finding's parameter is, so that a renderer can choose its unit.</summary>
public enum QuantityKind
{
    /// <summary>A text, shown as it is.</summary>
    Text = 0,

    /// <summary>A plain number or ratio.</summary>
    Number,

    /// <summary>A whole count.</summary>
    Count,

    /// <summary>Torque, N·m.</summary>
    Torque,

    /// <summary>Length, m.</summary>
    Length,

    /// <summary>Stress or strength, Pa.</summary>
    Stress,

    /// <summary>Surface pressure, Pa, shown in kPa or psi.</summary>
    SurfacePressure,

    /// <summary>Force, N.</summary>
    Force,

    /// <summary>Power, W.</summary>
    Power,

    /// <summary>Rotational speed, rad/s, shown in revolutions per minute.</summary>
    RotationalSpeed,

    /// <summary>Angle, rad, shown in degrees.</summary>
    Angle,

    /// <summary>Mass moment of inertia, kg·m².</summary>
    Inertia,

    /// <summary>Energy, J.</summary>
    Energy,

    /// <summary>Time, s.</summary>
    Time,

    /// <summary>Temperature, K as an absolute value, shown in degrees Celsius or Fahrenheit.</summary>
    Temperature,

    /// <summary>Probability, 0 to 1.</summary>
    Probability,

    /// <summary>A margin: a ratio that is good above 1, cut down to two decimals so that it never looks better than it is.</summary>
    Margin,

    /// <summary>Torsional stiffness, N·m/rad.</summary>
    Stiffness,
}
