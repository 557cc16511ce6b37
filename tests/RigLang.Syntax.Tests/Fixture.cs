using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests;

/// <summary>The example files, and short ways to read one line.</summary>
internal static class Fixture
{
    public static IEnumerable<string> Names =>
        typeof(Fixture).Assembly.GetManifestResourceNames().Where(name => name.EndsWith(".rig", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public static string Text(string name)
    {
        using var reader = new StreamReader(typeof(Fixture).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    public static string LargeFile(int lines)
    {
        var one = Text(Names.Single(name => name.EndsWith("coast.rig", StringComparison.Ordinal)));
        var text = new System.Text.StringBuilder();
        for (var count = 0; count < lines; count += one.Count(c => c == '\n'))
        {
            text.Append(one);
        }

        return text.ToString();
    }

    /// <summary>An indented line by itself.</summary>
    public static LineSyntax Line(string text) => FileSyntax.Parse("    " + text).Lines[0];

    public static FactSyntax Fact(string text) => (FactSyntax)Line(text).Statement!;

    public static IEnumerable<string> SlugsOf(string text) => FileSyntax.Parse(text).Findings().Select(at => at.Finding.Check.Slug);
}
