using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace RigLang.Architecture.Tests;

/// <summary>
/// Below the program and the server there is no clock, console, culture or file system. The compiler refuses them by src/BannedSymbols.txt; this looks at what
/// was compiled, so that nobody silences the compiler unseen.
/// </summary>
public sealed class CoreTests
{
    private static readonly string[] Types =
    [
        "System.Console", "System.IO.File", "System.IO.Directory", "System.IO.FileInfo", "System.IO.DirectoryInfo", "System.IO.FileStream", "System.IO.Path",
        "System.Diagnostics.Process", "System.Threading.Timer", "System.Diagnostics.Stopwatch",
    ];

    private static readonly string[] Members =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture", "System.Threading.Thread.Sleep",
        "System.Environment.GetEnvironmentVariable", "System.Environment.get_CurrentDirectory", "System.Environment.Exit",
    ];

    public static TheoryData<string> Core => [.. Floors.Core];

    [Theory]
    [MemberData(nameof(Core))]
    public void A_floor_of_the_core_uses_no_clock_console_culture_or_files(string floor)
    {
        using var stream = File.OpenRead(Floors.Load(floor).Location);
        using var image = new PEReader(stream);
        var reader = image.GetMetadataReader();

        reader.TypeReferences.Select(handle => NameOf(reader, reader.GetTypeReference(handle))).Should().NotContain(name => Types.Contains(name));
        reader.MemberReferences.Select(handle => reader.GetMemberReference(handle)).Where(member => member.Parent.Kind == HandleKind.TypeReference)
            .Select(member => $"{NameOf(reader, reader.GetTypeReference((TypeReferenceHandle)member.Parent))}.{reader.GetString(member.Name)}")
            .Should().NotContain(name => Members.Contains(name));
    }

    private static string NameOf(MetadataReader reader, TypeReference type) => $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}";
}
