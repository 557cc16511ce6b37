using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Tests;

/// <summary>Short ways from a file's text to results and findings.</summary>
internal static class Study
{
    public static readonly FileId File = new("/rigs/a.rig");

    public static WorkspaceAnalysis Of(string text, params (string Path, string Text)[] others) =>
        new(new Workspace(new MemoryFileSource([(File.Path, text), .. others.Select(other => ("/rigs/" + other.Path, other.Text))]), "/rigs"));

    public static RigStudy Rig(string text, string name = "r")
    {
        var analysis = Of(text);
        return analysis.Rig(analysis.Workspace.Find(File, DeclarationKind.Rig, name)!);
    }

    public static WeighingStudy Weighing(string text, string name = "w")
    {
        var analysis = Of(text);
        return analysis.Weighing(analysis.Workspace.Find(File, DeclarationKind.Weighing, name)!)!;
    }

    public static ImmutableArray<Finding> Findings(string text) => Of(text).Solved.Findings(File).Remaining;

    public static IEnumerable<string> Slugs(string text) => Findings(text).Select(finding => finding.Check.Slug);

    /// <summary>The result of that name for the subject.</summary>
    public static Node<double> Result(this ISubject subject, string name) => Catalogue.FindResult(name)!.Compute(subject)!;

    public static double Value(this ISubject subject, string name)
    {
        var node = subject.Result(name);
        node.IsComputed.Should().BeTrue($"{name} should be computed, but needs {node.Missing?.Words}");
        return node.Value;
    }
}
