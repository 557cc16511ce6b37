using System.Runtime.CompilerServices;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>
/// Keeps the study of each declaration while its parts are the same objects; one state of the files hands it on to the next. A study goes when its declaration
/// does, so a long session holds no more than its files say. Safe to use from several threads.
/// </summary>
internal sealed class StudyShelf<TParts, TStudy>(Func<TParts, TParts, bool> same)
    where TParts : class
    where TStudy : class
{
    private readonly ConditionalWeakTable<Declaration, Kept> studies = [];
    private readonly Lock gate = new();

    /// <summary>The study kept for these parts, or a new one in its place. Two that ask at once get the same.</summary>
    public TStudy Get(Declaration declaration, TParts parts, Func<TParts, TStudy> make)
    {
        lock (gate)
        {
            if (studies.TryGetValue(declaration, out var known) && same(known.Parts, parts))
            {
                return known.Study;
            }

            var study = make(parts);
            studies.AddOrUpdate(declaration, new Kept(parts, study));
            return study;
        }
    }

    private sealed record Kept(TParts Parts, TStudy Study);
}
