using RigLang.Model.Checks;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Reading;

namespace RigLang.Model.Tests.Declaring;

public sealed class VocabularyTests
{
    public static TheoryData<string> Facts()
    {
        var data = new TheoryData<string>();
        foreach (var fact in Vocabulary.Blocks.SelectMany(block => block.Facts))
        {
            data.Add(fact.FullName);
        }

        return data;
    }

    private static FactDeclaration Find(string fullName) => Vocabulary.Blocks.SelectMany(block => block.Facts).Single(fact => fact.FullName == fullName);

    [Theory]
    [MemberData(nameof(Facts))]
    public void Every_facts_example_is_read_without_a_finding(string fullName)
    {
        var fact = Find(fullName);
        var indent = "";
        var text = "";
        var path = fact.Home.Path.Split('.');
        text += $"{path[0]} x\n";
        for (var depth = 1; depth < path.Length; depth++)
        {
            indent += "    ";
            var opener = Vocabulary.FindInKind(fact.Home.Kind!.Value, path[depth])!;
            text += $"{indent}{path[depth]} {(opener.Keyword == "aboard" ? "" : opener.Example)}\n";
        }

        text += $"{indent}    {fact.Keyword} {fact.Example}\n";

        Reading.Slugs(text).Should().BeEmpty(text);
    }

    [Theory]
    [MemberData(nameof(Facts))]
    public void Every_fact_says_what_it_is(string fullName)
    {
        var fact = Find(fullName);

        fact.Meaning.Should().NotBeNullOrWhiteSpace();
        fact.Meaning.Should().NotEndWith(".");
        fact.Else.Should().NotBeNullOrWhiteSpace();
    }

    [Fact]
    public void Within_one_kind_a_keyword_has_one_home()
    {
        foreach (var kind in DeclarationKinds.All)
        {
            var keywords = Vocabulary.Blocks.Where(block => block.Kind == kind).SelectMany(block => block.Facts).Select(fact => fact.Keyword).ToList();

            // A pass and its trailer may both speak of a coupling's height; no kind has a keyword twice.
            keywords.Should().OnlyHaveUniqueItems($"each keyword of a {kind.Keyword()} must have one home");
        }
    }

    [Fact]
    public void The_line_reader_knows_the_words_that_open_blocks()
    {
        var facts = Vocabulary.Blocks.SelectMany(block => block.Facts).ToList();

        foreach (var fact in facts)
        {
            Kinds.OpensBlock(fact.Keyword).Should().Be(fact.Opens is not null, $"a wrong indent of `{fact.Keyword}` is found by it");
        }
    }

    [Fact]
    public void No_alias_is_a_keyword_of_the_same_kind()
    {
        foreach (var kind in DeclarationKinds.All)
        {
            var facts = Vocabulary.Blocks.Where(block => block.Kind == kind).SelectMany(block => block.Facts).ToList();

            facts.SelectMany(fact => fact.Aliases).Should().NotIntersectWith(facts.Select(fact => fact.Keyword));
        }
    }

    [Fact]
    public void Codes_and_slugs_are_used_once()
    {
        ModelChecks.All.Select(check => check.Code).Should().OnlyHaveUniqueItems();
        ModelChecks.All.Select(check => check.Slug).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void The_densities_are_those_of_the_trade()
    {
        // Common practice: water 1.00, petrol 0.745, diesel 0.835 kg/L.
        Fluids.Density("water").Should().Be(1000);
        Fluids.Density("petrol").Should().Be(745);
        Fluids.Density("diesel").Should().Be(835);
        double.IsNaN(Fluids.Density("gravel")).Should().BeTrue();
    }
}
