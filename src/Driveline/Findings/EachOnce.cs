namespace Driveline.Findings;

/// <summary>Leaves equal findings out, but for the first of them.</summary>
internal static class EachOnce
{
    private const int Few = 24;

    /// <summary>The same list without what it holds already.</summary>
    public static List<Finding> Of(List<Finding> findings)
    {
        if (findings.Count > Few)
        {
            return [.. findings.Distinct()];
        }

        for (int k = 1; k < findings.Count; k++)
        {
            if (findings.IndexOf(findings[k]) < k)
            {
                findings.RemoveAt(k--);
            }
        }

        return findings;
    }
}
