using System.Xml.Linq;
using RigLang.Syntax.Checks;

namespace RigLang.Architecture.Tests;

public sealed class DocumentationTests
{
    public static TheoryData<string> Existing => [.. Floors.Existing];

    [Theory]
    [MemberData(nameof(Existing))]
    public void Every_public_type_says_what_it_is(string floor)
    {
        var assembly = Floors.Load(floor);
        var said = XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml")).Descendants("member")
            .Where(member => !string.IsNullOrWhiteSpace(member.Element("summary")?.Value) || member.Element("inheritdoc") is not null)
            .Select(member => member.Attribute("name")!.Value).ToHashSet();

        assembly.GetExportedTypes().Where(type => !type.IsNested && !DeclaresCheck(type)).Select(type => $"T:{type.FullName}").Where(name => !said.Contains(name)).Should().BeEmpty();
    }

    /// <summary>A check says what it is in its declaration, which its page is made from.</summary>
    private static bool DeclaresCheck(Type type) =>
        type.GetFields().Select(field => field.FieldType).Concat(type.GetProperties().Select(property => property.PropertyType)).Contains(typeof(CheckDeclaration)) && type is { IsAbstract: true, IsSealed: true };
}
