using RigLang.Syntax.Formatting;
using RigLang.Syntax.Tree;

namespace RigLang.Fuzzing.Targets;

/// <summary>The formatter: what it gives is its own format already, reads the same but for blanks, and has the same lines.</summary>
internal sealed class FormatTarget : IFuzzTarget
{
    public string Name => "format";

    public void Run(ReadOnlySpan<byte> input)
    {
        var tree = FileSyntax.Parse(Promise.Text(input));
        var once = Formatter.FormatText(tree);
        Promise.Holds(Blankless(once) == Blankless(tree.ToString()), "nothing but blanks changes");
        var twice = Formatter.FormatText(FileSyntax.Parse(once));
        Promise.Holds(twice == once, "formatting twice is formatting once");
    }

    private static string Blankless(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
