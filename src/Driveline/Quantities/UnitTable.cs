namespace Driveline.Quantities;

/// <summary>Units by dimension and by every way in which each is written.</summary>
internal sealed class UnitTable
{
    private readonly Dictionary<string, WrittenUnit>[] exact;
    private readonly Dictionary<string, WrittenUnit>[] anyCase;

    public UnitTable()
    {
        int count = (int)Dimension.HeatTransfer + 1;
        Units = new List<WrittenUnit>[count];
        exact = new Dictionary<string, WrittenUnit>[count];
        anyCase = new Dictionary<string, WrittenUnit>[count];
        for (int i = 0; i < count; i++)
        {
            Units[i] = [];
            exact[i] = new Dictionary<string, WrittenUnit>(StringComparer.Ordinal);
            anyCase[i] = new Dictionary<string, WrittenUnit>(StringComparer.OrdinalIgnoreCase);
        }
    }

    public List<WrittenUnit>[] Units { get; }

    public void Add(Dimension dimension, string symbol, double numerator, double denominator, string alsoWritten) =>
        Add(dimension, symbol, numerator, denominator, 0, alsoWritten);

    public void Add(Dimension dimension, string symbol, double numerator, double denominator, double offset, string alsoWritten)
    {
        var unit = new WrittenUnit(dimension, symbol, numerator, denominator, offset);
        Units[(int)dimension].Add(unit);
        foreach (string spelling in (symbol + " " + alsoWritten).Split(' '))
        {
            exact[(int)dimension][spelling] = unit;

            // A later spelling that differs by case only (Mg beside mg) would be a guess: the first one keeps it.
            if (!anyCase[(int)dimension].ContainsKey(spelling))
            {
                anyCase[(int)dimension].Add(spelling, unit);
            }
        }
    }

    public WrittenUnit? Find(int dimension, string spelling)
    {
        if (exact[dimension].TryGetValue(spelling, out WrittenUnit? unit))
        {
            return unit;
        }

        bool smallToCapital = spelling.Length > 1 && spelling[0] == 'm';
        return anyCase[dimension].TryGetValue(spelling, out unit) && !(smallToCapital && unit.Symbol[0] == 'M') ? unit : null;
    }
}
