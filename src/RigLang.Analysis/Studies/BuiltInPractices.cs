using System.Reflection;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>The practices that every file sees, <c>common-na</c> and <c>common-eu</c>, written in the language itself.</summary>
public static class BuiltInPractices
{
    /// <summary>The file's name in places and reports.</summary>
    public static FileId File { get; } = new("built-in/practices.rig");

    public static string Text { get; } = ReadText();

    private static readonly Lazy<LinkedFile> Linked = new(() =>
    {
        var source = new MemoryFileSource((File.Path, Text));
        return new Workspace(source, "built-in").Link(File)!;
    });

    /// <summary>The declarations, for listing.</summary>
    public static IEnumerable<Declaration> All => Linked.Value.Declarations;

    public static Declaration? Find(DeclarationKind kind, string name) => Linked.Value.FindOwn(kind, name);

    private static string ReadText()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("practices.rig")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
