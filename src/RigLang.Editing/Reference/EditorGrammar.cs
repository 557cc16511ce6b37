using System.Reflection;

namespace RigLang.Editing.Reference;

/// <summary>The colouring grammar and the language settings of the editor extension: their templates with the declared words put in.</summary>
internal static class EditorGrammar
{
    private const string Extension = "editor-client/vscode";

    public static IEnumerable<ReferencePage> All() =>
    [
        new($"{Extension}/syntaxes/rig.tmLanguage.json", Fill(Template("rig.tmLanguage.json"))),
        new($"{Extension}/language-configuration.json", Fill(Template("language-configuration.json"))),
    ];

    /// <summary>Longer words first: of two that begin alike the expression takes the first that fits.</summary>
    private static string Fill(string template)
    {
        foreach (var (name, words) in GrammarWords.ByName)
        {
            template = template.Replace("{{" + name + "}}", string.Join('|', words.Distinct().OrderByDescending(word => word.Length).ThenBy(word => word, StringComparer.Ordinal)), StringComparison.Ordinal);
        }

        return template;
    }

    private static string Template(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
