using System.Xml.Linq;

namespace RigLang.Architecture.Tests;

public sealed class FloorTests
{
    public static TheoryData<string> Existing => [.. Floors.Existing];

    [Fact]
    public void Every_project_is_a_floor_of_the_list() =>
        Directory.GetDirectories(Path.Combine(Source.Root, "src")).Select(Path.GetFileName).Where(name => name!.StartsWith("RigLang.", StringComparison.Ordinal))
            .Should().BeSubsetOf(Floors.All);

    [Theory]
    [MemberData(nameof(Existing))]
    public void A_project_refers_only_to_floors_above_it_in_the_list(string floor)
    {
        var references = XDocument.Parse(Source.Read($"src/{floor}/{floor}.csproj")).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/'))).ToList();

        references.Where(other => !Floors.Above(floor, other)).Should().BeEmpty();
        if (Floors.Ground.Contains(floor))
        {
            references.Should().BeEmpty();
        }
    }

    [Theory]
    [MemberData(nameof(Existing))]
    public void An_assembly_uses_only_floors_above_it_in_the_list(string floor) =>
        Floors.Load(floor).GetReferencedAssemblies().Select(name => name.Name!).Where(name => name.StartsWith("RigLang.", StringComparison.Ordinal) && !Floors.Above(floor, name))
            .Should().BeEmpty();

    [Theory]
    [InlineData("StreamJsonRpc", "RigLang.LanguageServer")]
    [InlineData("System.CommandLine", "RigLang.Cli")]
    [InlineData("Spectre.Console", "RigLang.Cli")]
    [InlineData("Sprache", "RigLang.Syntax")]
    [InlineData("UnitsNet", "RigLang.Quantities")]
    [InlineData("MathNet.Numerics", "RigLang.Mechanics")]
    [InlineData("NetTopologySuite", "RigLang.Model")]
    public void A_library_is_known_to_one_floor_alone(string library, string floor) =>
        Floors.Existing.Where(other => Floors.Load(other).GetReferencedAssemblies().Any(name => name.Name!.StartsWith(library, StringComparison.Ordinal)))
            .Should().BeSubsetOf([floor]);
}
