using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Model.Tests;

/// <summary>Short ways to files in memory and to what they say.</summary>
internal static class Reading
{
    public static Workspace Workspace(params (string Path, string Text)[] files) =>
        new(new MemoryFileSource([.. files.Select(file => ("/rigs/" + file.Path, file.Text))]), "/rigs");

    public static LinkedFile File(string text) => Workspace(("a.rig", text)).Link(new FileId("/rigs/a.rig"))!;

    public static Declaration Only(string text) => File(text).Declarations.Should().ContainSingle().Subject;

    /// <summary>Slugs of everything reported of a lone file, in order.</summary>
    public static ImmutableArray<string> Slugs(string text) => [.. Findings(File(text)).Select(finding => finding.Check.Slug)];

    public static IEnumerable<Finding> Findings(LinkedFile file) => file.File.Declarations.SelectMany(own => own.Findings).Concat(file.Findings);

    public static Fact Fact(this Block block, string keyword) => block.Facts.First(fact => fact.Declaration.Keyword == keyword);

    public static double Si(this Block block, string keyword) => block.Fact(keyword).MeasureOf(Signature.ValueRole)!.Value;
}
