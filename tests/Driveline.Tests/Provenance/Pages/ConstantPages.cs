using System.Reflection;
using Driveline.Provenance;

namespace Driveline.Tests.Provenance;

/// <summary>Every source that stands at a constant of the library, found by looking into it.</summary>
internal static class ConstantPages
{
    public static DataPage OfConstants() => DataPage.Of(
            "Sources in the code",
            "Every source that stands beside the numbers of a formula or a table, by the type that holds it. A source of a formula says "
                + "the number itself; the numbers of tables stand on the other pages.")
        .Table("Sources", string.Empty, "concept | type | says", All().Select(s => DataRow.Of(
            s.Basis, s.Type.Namespace!.Split('.')[^1], s.Type.Name, s.Basis.Document)));

    /// <summary>Each with the type that holds it, once.</summary>
    public static IEnumerable<(Type Type, Basis Basis)> All() =>
        from type in typeof(Basis).Assembly.GetTypes()
        where !type.ContainsGenericParameters && type.Namespace is not null
        from basis in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(f => f.FieldType == typeof(Basis))
            .Select(f => (Basis)f.GetValue(null)!)
            .Where(b => b.Kind != BasisKind.Given)
            .Distinct()
        orderby type.FullName, basis.ToString()
        select (type, basis);
}
