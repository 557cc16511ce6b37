using FsCheck;
using FsCheck.Xunit;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Whatever is typed, in whatever steps: every answer is the one that a fresh start on the same text gives.</summary>
public class IncrementalTests
{
    private static readonly string[] Pieces =
        ["", "\n", "    ", "        ", "wheelbase 2.94 m", "axle front\n        carries 1195 kg", "vehicle van\n", "rig coast like x\n", "\"", "?", "🚐", "e\u0301", "\r\n", "±", "kg", "use \"b.rig\"\n", "# ", "allow x because \"y\"", "without axle front"];

    [Property(MaxTest = 60)]
    public void Edits_lead_where_a_fresh_start_leads(int seed)
    {
        var random = new System.Random(seed);
        var disk = new ChangingSource(("/rigs/b.rig", Example("2-caravan.rig")), ("/rigs/a.rig", Example("1-van.rig")));
        var (file, workspace) = (new FileId("/rigs/main.rig"), new EditorWorkspace(disk));
        workspace.SetFolders(["/rigs"]);
        var text = "use \"b.rig\"\nuse \"a.rig\"\n" + Example("6-rigs.rig").Replace("use ", "# use ", StringComparison.Ordinal) + Example("4-loads.rig");
        workspace.Open(file, text);
        for (var step = 0; step < 8; step++)
        {
            var lines = Lines(text);
            var (first, second) = (Place(random, lines), Place(random, lines));
            var (start, end) = random.Next(3) == 0 ? (first, first) : first < second ? (first, second) : (second, first);
            end = end.Line > start.Line + 3 ? new LinePosition(start.Line + 1, 0) : end;
            var added = string.Concat(Enumerable.Range(0, random.Next(3)).Select(_ => Pieces[random.Next(Pieces.Length)]));
            text = text[..Offset(lines, start)] + added + text[Offset(lines, end)..];
            workspace.Change(file, [(new LineRange(start, end), added)]);
        }

        var fresh = new EditorWorkspace(disk);
        fresh.SetFolders(["/rigs"]);
        fresh.Open(file, text);
        Answers(workspace.Current, file).Should().Equal(Answers(fresh.Current, file));
    }

    private static List<string> Answers(ILanguageService service, FileId file) =>
    [
        .. service.Findings(file, default).Select(finding => $"{finding.Range} {finding.Check.Code} {finding.Message} {string.Join(';', finding.Related.Select(related => related.Place))}"),
        .. service.Outline(file, default).Select(entry => $"{entry.Range} {entry.Name} {entry.Children.Length}"),
        .. service.Folds(file, default).Select(fold => fold.ToString()),
        .. service.MeaningTokens(file, null, default).Select(token => token.ToString()),
        .. service.InlayNotes(file, new LineRange(default, new LinePosition(9999, 0)), default).Select(note => note.ToString()),
    ];

    private static string Example(string name) => Examples.Read($"people-carrier/{name}");

    private static LinePosition Place(System.Random random, List<string> lines)
    {
        var line = random.Next(lines.Count);
        return new LinePosition(line, random.Next(lines[line].TrimEnd('\r', '\n').Length + 1));
    }

    /// <summary>Each line with its break, so that offsets are plain sums.</summary>
    private static List<string> Lines(string text)
    {
        var lines = new List<string>();
        var start = 0;
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] is '\n' || (text[index] is '\r' && !(index + 1 < text.Length && text[index + 1] == '\n')))
            {
                lines.Add(text[start..(index + 1)]);
                start = index + 1;
            }
        }

        lines.Add(text[start..]);
        return lines;
    }

    private static int Offset(List<string> lines, LinePosition position) => lines.Take(position.Line).Sum(line => line.Length) + position.Character;
}
