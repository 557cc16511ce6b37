using RigLang.Editing.Reference;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Serving;

/// <summary>Where the pages about the checks are: beside the program, so that a link from a finding works without a network.</summary>
internal static class CheckPages
{
    private static readonly Lazy<string?> Folder = new(() => Path.Combine(AppContext.BaseDirectory, "checks") is var folder && Directory.Exists(folder) ? folder : null);

    /// <summary>A <c>file:</c> address; null where the pages didn't come with the program.</summary>
    public static string? AddressOf(CheckDeclaration check)
    {
        if (Folder.Value is not { } folder)
        {
            return null;
        }

        var page = Path.Combine(folder, ReferencePages.NameOf(check));
        return File.Exists(page) ? new Uri(page).AbsoluteUri : null;
    }
}
