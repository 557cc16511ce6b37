using System.Collections.Concurrent;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>Keeps studies from one state of the files to the next, while their parts are the same.</summary>
internal sealed class StudyShelf<TParts, TStudy>(Func<TParts, TStudy> make, Func<TParts, TParts, bool> same, StudyShelf<TParts, TStudy>? before)
    where TStudy : class
{
    // The key is what a person would call "the same rig": file, kind and name; the parts say whether it still is.
    private readonly ConcurrentDictionary<string, (TParts Parts, TStudy Study)> studies = new(before?.studies ?? [], StringComparer.Ordinal);

    public TStudy Get(Declaration declaration, TParts parts, string variant = "")
    {
        var key = declaration.Own.Path + variant;
        if (studies.TryGetValue(key, out var known) && same(known.Parts, parts))
        {
            return known.Study;
        }

        var study = make(parts);
        studies[key] = (parts, study);
        return study;
    }
}
