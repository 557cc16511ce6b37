using FsCheck.Xunit;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>No text and no position makes an answer throw.</summary>
public class RobustnessTests
{
    private static readonly FileId Main = new("/rigs/main.rig");

    public static TheoryData<string> Texts =>
    [
        "", "\n", "\r", "\uFEFF", "\0\u0001\u0002", "\"", "use", "use \"", "use \"main.rig\"", "use \"../../../x\"", "language", "language 9", "vehicle", "vehicle v like", "vehicle v like v",
        "rig r like r\n    vehicle", "rig a like b\n\nrig b like a", "vehicle v\n    wheelbase 0 m\n    axle front\n        carries -5 kg", "rig r\n    expect", "rig r\n    expect x <", "rig r\n    restoration ? for",
        "load l\n    on trailer\n        item x", "weighing w\n    rig r\n    pass solo\n        scale", "trip t\n    leg a\n    leg a\n    stop a\n    stop a", "trip t\n    stop nowhere", "practice p\n    limit\n    assume",
        "vehicle v\n        deep\n            deeper\n                deepest\n    tyres 5", "vehicle v\n\twheelbase\t2.94 m", "rig r\n    without load x", "vehicle \ud800", "# \ud83d\ude90\n\ud83d\ude90 \ud83d\ude90",
    ];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Every_place_of_a_strange_text_has_an_answer(string text)
    {
        var workspace = Open(text);
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        for (var line = -1; line <= lines.Length; line++)
        {
            for (var character = -1; character <= (line >= 0 && line < lines.Length ? lines[line].Length + 1 : 2); character++)
            {
                AskAt(workspace.Current, new LinePosition(line, character));
            }
        }

        AskAll(workspace.Current);
    }

    [Property(MaxTest = 40)]
    public void A_damaged_example_has_answers_everywhere(int seed)
    {
        var random = new System.Random(seed);
        string[] paths = ["people-carrier/1-van.rig", "people-carrier/4-loads.rig", "people-carrier/6-rigs.rig", "people-carrier/trips/saddle.rig", "pick-up/weighings/2026-05-02.rig", "firewood/3-saturday.rig", "overloaded/too-much.rig"];
        var path = paths[random.Next(paths.Length)];
        var text = Examples.Read(path);
        for (var cut = 0; cut < 6; cut++)
        {
            var start = random.Next(text.Length);
            text = text.Remove(start, Math.Min(random.Next(12), text.Length - start)).Insert(start, random.Next(2) == 0 ? "" : ((char)random.Next(32, 0x2200)).ToString());
        }

        var file = new FileId($"{Examples.Folder}/{path}");
        var workspace = Examples.Open();
        workspace.Open(file, text);
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        AskAll(workspace.Current, file);
        for (var question = 0; question < 40; question++)
        {
            var line = random.Next(lines.Length);
            AskAt(workspace.Current, new LinePosition(line, random.Next(lines[line].Length + 1)), file);
        }
    }

    [Fact]
    public void A_very_long_trip_can_be_asked_why()
    {
        var legs = string.Concat(Enumerable.Range(0, 4000).Select(leg => $"    leg l{leg}\n        distance 20 km\n        climb 5 m\n        descent 5 m\n"));
        var source = Examples.Source();
        var workspace = new EditorWorkspace(source);
        workspace.SetFolders([Examples.Folder]);
        var file = new FileId($"{Examples.Folder}/people-carrier/long.rig");
        workspace.Open(file, "use \"6-rigs.rig\"\ntrip long\n    rig coast\n    start-charge 95 %\n    start home\n" + legs);
        var last = workspace.Current.Outline(file, default).Single(entry => entry.Name == "long").Children[^1];
        workspace.Current.Hover(file, last.NameRange.Start, default)!.Markdown.Should().Contain("Left on arrival");
    }

    private static EditorWorkspace Open(string text)
    {
        var workspace = new EditorWorkspace(new MemoryFileSource());
        workspace.SetFolders(["/rigs"]);
        workspace.Open(Main, text);
        return workspace;
    }

    private static void AskAt(ILanguageService service, LinePosition at, FileId? file = null)
    {
        var asked = file ?? Main;
        service.Hover(asked, at, default);
        service.Complete(asked, at, default);
        service.Definition(asked, at, default);
        service.References(asked, at, true, default);
        foreach (var change in service.Changes(asked, new LineRange(at, at), default))
        {
            _ = change.Edits;
        }

        foreach (var lens in service.Lenses(asked, default))
        {
            service.LensWords(asked, lens.Subject, default);
        }

        service.Report(asked, null, default);
        service.Signature(asked, at, default);
        service.Highlights(asked, at, default);
        service.TypeDefinition(asked, at, default);
        service.RenameTarget(asked, at, default);
        service.Rename(asked, at, "other-name", default);
        service.LinkedPlaces(asked, at, default);
        service.SelectionRanges(asked, at, default);
        service.Links(asked, default);
        service.NamesLike("a", default);
        service.PathsAfterMove([(asked, new FileId("/elsewhere/x.rig"))], default);
    }

    private static void AskAll(ILanguageService service, FileId? file = null)
    {
        var asked = file ?? Main;
        service.Findings(asked, default);
        service.Outline(asked, default);
        service.Folds(asked, default);
        service.MeaningTokens(asked, null, default);
        service.InlayNotes(asked, new LineRange(default, new LinePosition(9999, 0)), default);
        service.Format(asked, null, default);
        service.Format(asked, new LineRange(new LinePosition(5, 0), new LinePosition(2, 0)), default);
    }
}
