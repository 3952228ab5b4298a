#:property PublishAot=false
// Looks into every assembly, PDB and XML file of the packages in a folder: no document and no PDB is named by a path of the machine that
// built it, each document carries its source, so that a reader can step into it without any address, and the docs tell of public types
// alone. Usage: dotnet run symbols.cs FOLDER
using System.IO.Compression;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;

var embedded = new Guid("0E8A571B-6926-466E-B4AD-8AB04611F5FE");
int documents = 0, symbols = 0, described = 0, faults = 0;
foreach (string path in Directory.EnumerateFiles(args[0]).Where(f => f.EndsWith("nupkg", StringComparison.Ordinal)).Order())
{
    using ZipArchive package = ZipFile.OpenRead(path);
    foreach (ZipArchiveEntry entry in package.Entries.Where(e => e.Name.StartsWith("Driveline", StringComparison.Ordinal)))
    {
        using var bytes = new MemoryStream();
        using (Stream packed = entry.Open())
        {
            packed.CopyTo(bytes);
        }

        bytes.Position = 0;
        string where = Path.GetFileName(path) + ", " + entry.FullName;
        if (entry.Name.EndsWith(".dll", StringComparison.Ordinal))
        {
            using var assembly = new PEReader(bytes);
            foreach (DebugDirectoryEntry debug in assembly.ReadDebugDirectory().Where(d => d.Type == DebugDirectoryEntryType.CodeView))
            {
                Check(where, assembly.ReadCodeViewDebugDirectoryData(debug).Path);
            }

            if (entry.FullName.StartsWith("lib/", StringComparison.Ordinal)
                && package.GetEntry(Path.ChangeExtension(entry.FullName, ".xml")) is { } docs)
            {
                HashSet<string> seen = PublicTypes(assembly.GetMetadataReader());
                using Stream xml = docs.Open();
                string[] types = [.. XDocument.Load(xml).Descendants("member").Select(m => (string)m.Attribute("name")!)
                    .Where(n => n.StartsWith("T:", StringComparison.Ordinal)).Select(n => n[2..])];
                described += types.Length;
                foreach (string type in types.Where(t => !seen.Contains(t)))
                {
                    Fault(where + ": its docs tell of " + type + ", which is not public");
                }
            }
        }
        else if (entry.Name.EndsWith(".pdb", StringComparison.Ordinal))
        {
            symbols++;
            using MetadataReaderProvider provider = MetadataReaderProvider.FromPortablePdbStream(bytes);
            MetadataReader reader = provider.GetMetadataReader();
            foreach (DocumentHandle handle in reader.Documents)
            {
                documents++;
                string name = reader.GetString(reader.GetDocument(handle).Name);
                Check(where, name);
                if (!reader.GetCustomDebugInformation(handle).Select(reader.GetCustomDebugInformation)
                    .Any(i => reader.GetGuid(i.Kind) == embedded))
                {
                    Fault(where + ": the source of " + name + " is not in it");
                }
            }
        }
    }
}

Console.WriteLine($"{documents} documents in {symbols} PDBs, {described} types described, {faults} faults");
return symbols > 0 && described > 0 && faults == 0 ? 0 : 1;

static HashSet<string> PublicTypes(MetadataReader reader) =>
    [.. reader.TypeDefinitions.Select(reader.GetTypeDefinition).Where(t => IsSeen(reader, t)).Select(t => NameOf(reader, t))];

static bool IsSeen(MetadataReader reader, TypeDefinition type) => (type.Attributes & TypeAttributes.VisibilityMask) switch
{
    TypeAttributes.Public => true,
    TypeAttributes.NestedPublic or TypeAttributes.NestedFamily or TypeAttributes.NestedFamORAssem =>
        IsSeen(reader, reader.GetTypeDefinition(type.GetDeclaringType())),
    _ => false,
};

static string NameOf(MetadataReader reader, TypeDefinition type) => type.GetDeclaringType() is { IsNil: false } outer
    ? NameOf(reader, reader.GetTypeDefinition(outer)) + "." + reader.GetString(type.Name)
    : reader.GetString(type.Namespace) + "." + reader.GetString(type.Name);

void Check(string where, string name)
{
    bool isRooted = name.StartsWith('/') || name.StartsWith('\\') || (name.Length > 1 && name[1] == ':');
    if (isRooted && !name.StartsWith("/_/", StringComparison.Ordinal))
    {
        Fault(where + " names " + name);
    }
}

void Fault(string what)
{
    faults++;
    Console.Error.WriteLine(what);
}
