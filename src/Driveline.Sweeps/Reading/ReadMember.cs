using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>A row of a study file, which is read and never written.</summary>
internal abstract class ReadMember(string name, string doc) : Member(name, doc)
{
    public sealed override void Write(Utf8JsonWriter writer, object value) =>
        throw new NotSupportedException("A study file is only read.");
}
