using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Fuzzing.Targets;

/// <summary>
/// The line reader: the tree gives back the text to the letter, every finding lies in its line, and an edit gives what a fresh reading of the edited text gives.
/// The first three bytes choose the edit.
/// </summary>
internal sealed class LinesTarget : IFuzzTarget
{
    private static readonly string[] Typed = ["", "x", " ", "\n", "\r\n", "\r", "é", "\U0001F699", "\"", "#", "12 kg", "\nvehicle v\n", "    ", "±", "?", "at "];

    public string Name => "lines";

    public void Run(ReadOnlySpan<byte> input)
    {
        var (at, length, typed) = input.Length < 3 ? (0, 0, "") : (input[0], input[1] % 16, Typed[input[2] % Typed.Length]);
        var text = Promise.Text(input.Length < 3 ? input : input[3..]);
        var tree = FileSyntax.Parse(text);
        Promise.Holds(tree.ToString() == text, "the tree gives back the text");
        foreach (var (line, finding) in tree.Findings())
        {
            Promise.Holds(line >= 0 && line < tree.Lines.Length && finding.Span.Start >= 0 && finding.Span.End <= tree.Lines[line].Text.Length, "a finding lies in its line");
        }

        var start = new LinePosition(at % tree.Lines.Length, at / 2);
        var end = start with { Character = start.Character + length };
        var edited = tree.WithChange(start, end, typed);
        var fresh = FileSyntax.Parse(edited.ToString());
        Promise.Holds(edited.Lines.Select(line => line.Text).SequenceEqual(fresh.Lines.Select(line => line.Text)), "an edit gives the lines of a fresh reading");
        Promise.Holds(edited.FirstLines.SequenceEqual(fresh.FirstLines), "an edit gives the declarations of a fresh reading");
        Promise.Holds(edited.Findings().Select(Words).SequenceEqual(fresh.Findings().Select(Words)), "an edit gives the findings of a fresh reading");
    }

    private static string Words((int Line, Syntax.Checks.LineFinding Finding) at) => $"{at.Line} {at.Finding.Span} {at.Finding.Check.Code} {at.Finding.Message}";
}
