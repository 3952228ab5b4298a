namespace Driveline.Quantities;

/// <summary>Every unit that <see cref="QuantityText"/> reads, by dimension, in the order in which we offer them.</summary>
/// <remarks>
/// Spellings stand in the form <see cref="UnitSpelling"/> gives them: a dot between factors, no dot at the end.
/// Each is matched as written first; then without regard to case, but never so that a small m becomes a capital M (mPa is not MPa).
/// </remarks>
internal static class WrittenUnits
{
    private const string Pound = "lbf lb lbs pound pounds";
    private const string Foot = "ft foot feet";
    private const string InchWord = "in inch inches";
    private const string KilogramForce = "kgf kp kg";

    private static readonly UnitTable Held = Build();

    /// <summary>The units of a dimension; the first is SI, the rest in the order in which we offer them.</summary>
    public static IReadOnlyList<WrittenUnit> Of(Dimension dimension) => Held.Units[(int)dimension];

    /// <summary>The unit of that spelling within a dimension.</summary>
    public static WrittenUnit? Find(Dimension dimension, string spelling) => Held.Find((int)dimension, spelling);

    /// <summary>The unit of that spelling within any dimension, to say what was written instead.</summary>
    public static WrittenUnit? FindAny(string spelling)
    {
        for (int dimension = 1; dimension < Held.Units.Length; dimension++)
        {
            if (Held.Find(dimension, spelling) is { } unit)
            {
                return unit;
            }
        }

        return null;
    }

    /// <summary>The dimension with its article, e.g. "a torque".</summary>
    public static string Words(Dimension dimension) => dimension switch
    {
        Dimension.Number => "a plain number",
        Dimension.Torque => "a torque",
        Dimension.Length => "a length",
        Dimension.RotationalSpeed => "a rotational speed",
        Dimension.Power => "a power",
        Dimension.Inertia => "a mass moment of inertia",
        Dimension.Stress => "a stress or pressure",
        Dimension.Force => "a force",
        Dimension.Angle => "an angle",
        Dimension.Mass => "a mass",
        Dimension.Time => "a time",
        Dimension.Energy => "an energy",
        Dimension.Temperature => "a temperature",
        Dimension.Speed => "a travel speed",
        Dimension.TorsionalStiffness => "a torsional stiffness",
        Dimension.SpringRate => "a spring rate",
        Dimension.TorsionalDamping => "a torsional damping",
        Dimension.Area => "an area",
        Dimension.Rate => "a rate (how often)",
        Dimension.MassFlow => "a mass flow",
        Dimension.HeatCapacity => "a heat capacity",
        Dimension.SpecificHeat => "a specific heat",
        Dimension.HeatTransfer => "a heat transfer",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "No words for this dimension."),
    };

    private static UnitTable Build()
    {
        var t = new UnitTable();
        const double lbfFt = Si.PoundForce * Si.Foot;
        const double lbfIn = Si.PoundForce * Si.Inch;

        t.Add(Dimension.Number, string.Empty, 1, 1, "1");
        t.Add(Dimension.Number, "%", 1, 100, "percent pct");

        t.Add(Dimension.Torque, "N.m", 1, 1, "Nm");
        t.Add(Dimension.Torque, "kN.m", 1000, 1, "kNm");
        t.Add(Dimension.Torque, "lbf.ft", lbfFt, 1, Products(Pound, Foot));
        t.Add(Dimension.Torque, "lbf.in", lbfIn, 1, Products(Pound, InchWord));
        t.Add(Dimension.Torque, "kgf.m", Si.Gravity, 1, Products(KilogramForce, "m"));
        t.Add(Dimension.Torque, "daN.m", 10, 1, "daNm");
        t.Add(Dimension.Torque, "N.cm", 1, 100, "Ncm");
        t.Add(Dimension.Torque, "N.mm", 1, 1000, "Nmm");
        t.Add(Dimension.Torque, "kgf.cm", Si.Gravity, 100, Products(KilogramForce, "cm"));

        t.Add(Dimension.Length, "m", 1, 1, "meter meters metre metres");
        t.Add(Dimension.Length, "mm", 1, 1000, "millimeter millimeters millimetre millimetres");
        t.Add(Dimension.Length, "in", Si.Inch, 1, InchWord + " \" ''");
        t.Add(Dimension.Length, "ft", Si.Foot, 1, Foot + " '");
        t.Add(Dimension.Length, "cm", 1, 100, "centimeter centimeters centimetre centimetres");
        t.Add(Dimension.Length, "um", 1, 1e6, "micron microns");
        t.Add(Dimension.Length, "thou", Si.Inch, 1000, "mil mils");

        t.Add(Dimension.RotationalSpeed, "rad/s", 1, 1, "rad/sec");
        t.Add(Dimension.RotationalSpeed, "rpm", Si.Rpm, 1, "min-1 1/min /min r/min rev/min revs/min revolutions/minute U/min r.p.m");
        t.Add(Dimension.RotationalSpeed, "rev/s", 60 * Si.Rpm, 1, "r/s rps rev/sec revs/s");
        t.Add(Dimension.RotationalSpeed, "deg/s", Si.Degree, 1, "°/s degrees/s");

        t.Add(Dimension.Power, "W", 1, 1, "watt watts J/s N.m/s");
        t.Add(Dimension.Power, "kW", 1000, 1, "kilowatt kilowatts");
        t.Add(Dimension.Power, "hp", Si.MechanicalHorsepower, 1, "HP bhp horsepower mechanical.hp");
        t.Add(Dimension.Power, "PS", Si.MetricHorsepower, 1, "metric.hp metric.horsepower hp.metric hp(M) hp(metric) cv CV ch");
        t.Add(Dimension.Power, "MW", 1e6, 1, "megawatt megawatts");
        t.Add(Dimension.Power, "lbf.ft/s", lbfFt, 1, Ends(Products(Pound, Foot), "/s"));

        t.Add(Dimension.Inertia, "kg.m2", 1, 1, "kgm2");
        t.Add(Dimension.Inertia, "lb.ft2", Si.Pound * Si.Foot * Si.Foot, 1, "lbm.ft2 lbs.ft2 lbft2 ft2.lb");
        t.Add(Dimension.Inertia, "lb.in2", Si.Pound * Si.Inch * Si.Inch, 1, "lbm.in2 lbs.in2 lbin2 in2.lb");
        t.Add(Dimension.Inertia, "kg.cm2", 1, 1e4, "kgcm2");
        t.Add(Dimension.Inertia, "kg.mm2", 1, 1e6, "kgmm2");
        t.Add(Dimension.Inertia, "slug.ft2", Si.Slug * Si.Foot * Si.Foot, 1, Ends(Products(Pound, Foot), ".s2"));
        t.Add(Dimension.Inertia, "lbf.in.s2", lbfIn, 1, Ends(Products(Pound, InchWord), ".s2"));

        t.Add(Dimension.Stress, "Pa", 1, 1, "N/m2");
        t.Add(Dimension.Stress, "MPa", 1e6, 1, "N/mm2 MN/m2");
        t.Add(Dimension.Stress, "psi", Si.Psi, 1, "lbf/in2 lb/in2 lbs/in2");
        t.Add(Dimension.Stress, "ksi", 1000 * Si.Psi, 1, "kip/in2 kips/in2");
        t.Add(Dimension.Stress, "kPa", 1000, 1, "kN/m2");
        t.Add(Dimension.Stress, "bar", 1e5, 1, string.Empty);
        t.Add(Dimension.Stress, "GPa", 1e9, 1, "kN/mm2");
        t.Add(Dimension.Stress, "kgf/mm2", 1e6 * Si.Gravity, 1, "kp/mm2 kg/mm2");
        t.Add(Dimension.Stress, "kgf/cm2", 1e4 * Si.Gravity, 1, "kp/cm2 kg/cm2");

        t.Add(Dimension.Force, "N", 1, 1, "newton newtons");
        t.Add(Dimension.Force, "kN", 1000, 1, string.Empty);
        t.Add(Dimension.Force, "lbf", Si.PoundForce, 1, Pound);
        t.Add(Dimension.Force, "kgf", Si.Gravity, 1, "kp");
        t.Add(Dimension.Force, "daN", 10, 1, string.Empty);
        t.Add(Dimension.Force, "kip", 1000 * Si.PoundForce, 1, "kips klbf");

        t.Add(Dimension.Angle, "rad", 1, 1, "radian radians");
        t.Add(Dimension.Angle, "deg", Si.Degree, 1, "° degree degrees");
        t.Add(Dimension.Angle, "mrad", 1, 1000, string.Empty);
        t.Add(Dimension.Angle, "rev", 360 * Si.Degree, 1, "turn turns");

        t.Add(Dimension.Mass, "kg", 1, 1, "kilogram kilograms");
        t.Add(Dimension.Mass, "lb", Si.Pound, 1, "lbs lbm pound pounds");
        t.Add(Dimension.Mass, "t", 1000, 1, "tonne tonnes");
        t.Add(Dimension.Mass, "g", 1, 1000, "gram grams");
        t.Add(Dimension.Mass, "slug", Si.Slug, 1, "slugs");

        t.Add(Dimension.Time, "s", 1, 1, "sec second seconds");
        t.Add(Dimension.Time, "ms", 1, 1000, "millisecond milliseconds");
        t.Add(Dimension.Time, "min", 60, 1, "minute minutes");
        t.Add(Dimension.Time, "h", 3600, 1, "hr hrs hour hours");
        t.Add(Dimension.Time, "d", 86400, 1, "day days");

        t.Add(Dimension.Energy, "J", 1, 1, "joule joules N.m Nm W.s Ws");
        t.Add(Dimension.Energy, "kJ", 1000, 1, "kN.m kNm");
        t.Add(Dimension.Energy, "ft.lbf", lbfFt, 1, Products(Pound, Foot));
        t.Add(Dimension.Energy, "in.lbf", lbfIn, 1, Products(Pound, InchWord));
        t.Add(Dimension.Energy, "MJ", 1e6, 1, string.Empty);
        t.Add(Dimension.Energy, "kWh", 3.6e6, 1, "kW.h");

        t.Add(Dimension.Temperature, "K", 1, 1, "kelvin");
        t.Add(Dimension.Temperature, "degC", 1, 1, 273.15, "°C ℃ C celsius deg.C");
        t.Add(Dimension.Temperature, "degF", 5, 9, 459.67, "°F ℉ F fahrenheit deg.F");

        t.Add(Dimension.Speed, "m/s", 1, 1, "m/sec");
        t.Add(Dimension.Speed, "km/h", 1000, 3600, "kph kmh km/hr km/hour");
        t.Add(Dimension.Speed, "mph", 5280 * Si.Foot, 3600, "mi/h miles/h miles/hour");
        t.Add(Dimension.Speed, "ft/s", Si.Foot, 1, "fps ft/sec");
        t.Add(Dimension.Speed, "ft/min", Si.Foot, 60, "fpm");
        t.Add(Dimension.Speed, "m/min", 1, 60, string.Empty);
        t.Add(Dimension.Speed, "mm/s", 1, 1000, string.Empty);

        t.Add(Dimension.TorsionalStiffness, "N.m/rad", 1, 1, "Nm/rad");
        t.Add(Dimension.TorsionalStiffness, "kN.m/rad", 1000, 1, "kNm/rad");
        t.Add(Dimension.TorsionalStiffness, "N.m/deg", 1 / Si.Degree, 1, "Nm/deg N.m/° Nm/°");
        t.Add(Dimension.TorsionalStiffness, "lbf.ft/deg", lbfFt / Si.Degree, 1,
            Ends(Products(Pound, Foot), "/deg") + " " + Ends(Products(Pound, Foot), "/°"));
        t.Add(Dimension.TorsionalStiffness, "lbf.in/deg", lbfIn / Si.Degree, 1,
            Ends(Products(Pound, InchWord), "/deg") + " " + Ends(Products(Pound, InchWord), "/°"));
        t.Add(Dimension.TorsionalStiffness, "lbf.ft/rad", lbfFt, 1, Ends(Products(Pound, Foot), "/rad"));
        t.Add(Dimension.TorsionalStiffness, "lbf.in/rad", lbfIn, 1, Ends(Products(Pound, InchWord), "/rad"));

        t.Add(Dimension.SpringRate, "N/m", 1, 1, string.Empty);
        t.Add(Dimension.SpringRate, "N/mm", 1000, 1, "kN/m");
        t.Add(Dimension.SpringRate, "lbf/in", Si.PoundForce / Si.Inch, 1, "lb/in lbs/in lbf/inch lb/inch lbs/inch");
        t.Add(Dimension.SpringRate, "lbf/ft", Si.PoundForce / Si.Foot, 1, "lb/ft lbs/ft");
        t.Add(Dimension.SpringRate, "kgf/mm", 1000 * Si.Gravity, 1, "kp/mm kg/mm");
        t.Add(Dimension.SpringRate, "kN/mm", 1e6, 1, string.Empty);

        t.Add(Dimension.TorsionalDamping, "N.m.s/rad", 1, 1, "Nms/rad N.m.s Nms N.m/(rad/s) Nm/(rad/s)");
        t.Add(Dimension.TorsionalDamping, "lbf.ft.s/rad", lbfFt, 1,
            Ends(Products(Pound, Foot), ".s/rad") + " " + Ends(Products(Pound, Foot), "/(rad/s)"));
        t.Add(Dimension.TorsionalDamping, "lbf.in.s/rad", lbfIn, 1,
            Ends(Products(Pound, InchWord), ".s/rad") + " " + Ends(Products(Pound, InchWord), "/(rad/s)"));

        t.Add(Dimension.Area, "m2", 1, 1, "sq.m");
        t.Add(Dimension.Area, "mm2", 1, 1e6, "sq.mm");
        t.Add(Dimension.Area, "in2", Si.Inch * Si.Inch, 1, "sq.in sq.inch");
        t.Add(Dimension.Area, "cm2", 1, 1e4, "sq.cm");
        t.Add(Dimension.Area, "ft2", Si.Foot * Si.Foot, 1, "sq.ft");

        t.Add(Dimension.Rate, "1/s", 1, 1, "/s s-1 Hz");
        t.Add(Dimension.Rate, "1/min", 1, 60, "/min min-1 /minute");
        t.Add(Dimension.Rate, "1/h", 1, 3600, "/h h-1 /hr /hour 1/hr 1/hour");
        t.Add(Dimension.Rate, "1/d", 1, 86400, "/d /day 1/day");

        t.Add(Dimension.MassFlow, "kg/s", 1, 1, "kg/sec");
        t.Add(Dimension.MassFlow, "kg/min", 1, 60, string.Empty);
        t.Add(Dimension.MassFlow, "kg/h", 1, 3600, "kg/hr kg/hour");
        t.Add(Dimension.MassFlow, "t/h", 1000, 3600, "t/hr t/hour tonne/h tonnes/h tonnes/hour");
        t.Add(Dimension.MassFlow, "lb/min", Si.Pound, 60, "lbs/min");
        t.Add(Dimension.MassFlow, "lb/h", Si.Pound, 3600, "lbs/h lb/hr lbs/hr lb/hour lbs/hour");

        t.Add(Dimension.HeatCapacity, "J/K", 1, 1, string.Empty);
        t.Add(Dimension.HeatCapacity, "kJ/K", 1000, 1, string.Empty);
        t.Add(Dimension.SpecificHeat, "J/(kg.K)", 1, 1, "J/kg.K J/kg/K");
        t.Add(Dimension.SpecificHeat, "kJ/(kg.K)", 1000, 1, "kJ/kg.K kJ/kg/K");
        t.Add(Dimension.HeatTransfer, "W/K", 1, 1, string.Empty);
        return t;
    }

    /// <summary>Every product of a word of the first list and one of the second, in both orders, with and without the dot.</summary>
    private static string Products(string first, string second)
    {
        var all = new List<string>();
        foreach (string a in first.Split(' '))
        {
            foreach (string b in second.Split(' '))
            {
                all.Add(a + "." + b);
                all.Add(a + b);
                if (a != "kg")
                {
                    all.Add(b + "." + a);
                    all.Add(b + a);
                }
            }
        }

        return string.Join(" ", all);
    }

    private static string Ends(string spellings, string end) => spellings.Replace(" ", end + " ") + end;
}
