using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>Where compiled code compares quantities by value: 1 N·m and 0.001 kN·m are equal in one version and not in another.</summary>
internal static class QuantityEquality
{
    private static readonly string[] Comparing = ["op_Equality", "op_Inequality", "Equals", "GetHashCode"];

    /// <summary>The comparisons that the assembly refers to: of a quantity itself, or through a comparer of quantities.</summary>
    public static IReadOnlyList<string> In(Assembly assembly)
    {
        using FileStream file = File.OpenRead(assembly.Location);
        using var image = new PEReader(file);
        MetadataReader metadata = image.GetMetadataReader();
        var found = new List<string>();
        foreach (MemberReference member in metadata.MemberReferences.Select(metadata.GetMemberReference))
        {
            string name = metadata.GetString(member.Name);
            string owner = Owner(metadata, member.Parent);
            if (IsQuantity(owner) && Comparing.Contains(name))
            {
                found.Add(owner + "." + name);
            }
        }

        found.AddRange(Enumerable.Range(1, metadata.GetTableRowCount(TableIndex.TypeSpec))
            .Select(row => Spec(metadata, MetadataTokens.TypeSpecificationHandle(row)))
            .Where(t => t.StartsWith("EqualityComparer`1<UnitsNet.", StringComparison.Ordinal)
                || t.StartsWith("IEquatable`1<UnitsNet.", StringComparison.Ordinal)));
        return [.. found.Distinct().Order(StringComparer.Ordinal)];
    }

    private static bool IsQuantity(string type) =>
        type.StartsWith("UnitsNet.", StringComparison.Ordinal) || type.StartsWith("Nullable`1<UnitsNet.", StringComparison.Ordinal);

    private static string Owner(MetadataReader metadata, EntityHandle parent) => parent.Kind switch
    {
        HandleKind.TypeReference => Name(metadata, (TypeReferenceHandle)parent),
        HandleKind.TypeSpecification => Spec(metadata, (TypeSpecificationHandle)parent),
        _ => "",
    };

    private static string Spec(MetadataReader metadata, TypeSpecificationHandle spec) =>
        metadata.GetTypeSpecification(spec).DecodeSignature(new Names(), genericContext: null);

    private static string Name(MetadataReader metadata, TypeReferenceHandle handle)
    {
        TypeReference type = metadata.GetTypeReference(handle);
        string space = metadata.GetString(type.Namespace);
        return space == "UnitsNet" ? space + "." + metadata.GetString(type.Name) : metadata.GetString(type.Name);
    }

    private sealed class Names : ISignatureTypeProvider<string, object?>
    {
        public string GetArrayType(string elementType, ArrayShape shape) => elementType + "[,]";

        public string GetByReferenceType(string elementType) => elementType;

        public string GetFunctionPointerType(MethodSignature<string> signature) => "";

        public string GetGenericInstantiation(string genericType, ImmutableArray<string> typeArguments) =>
            genericType + "<" + string.Join(",", typeArguments) + ">";

        public string GetGenericMethodParameter(object? genericContext, int index) => "!!" + index;

        public string GetGenericTypeParameter(object? genericContext, int index) => "!" + index;

        public string GetModifiedType(string modifier, string unmodifiedType, bool isRequired) => unmodifiedType;

        public string GetPinnedType(string elementType) => elementType;

        public string GetPointerType(string elementType) => elementType;

        public string GetPrimitiveType(PrimitiveTypeCode typeCode) => typeCode.ToString();

        public string GetSZArrayType(string elementType) => elementType + "[]";

        public string GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) =>
            reader.GetString(reader.GetTypeDefinition(handle).Name);

        public string GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => Name(reader, handle);

        public string GetTypeFromSpecification(
            MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
            reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);
    }
}
