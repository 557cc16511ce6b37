using System.Collections.Frozen;
using System.Collections.Immutable;
using RigLang.Analysis.Checks.Braking;
using RigLang.Analysis.Checks.Declarations;
using RigLang.Analysis.Checks.Expectations;
using RigLang.Analysis.Checks.Handling;
using RigLang.Analysis.Checks.Hitch;
using RigLang.Analysis.Checks.Law;
using RigLang.Analysis.Checks.Loading;
using RigLang.Analysis.Checks.Questions;
using RigLang.Analysis.Checks.Ratings;
using RigLang.Analysis.Checks.Runs;
using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Checks.Tyres;
using RigLang.Analysis.Checks.Unused;
using RigLang.Analysis.Checks.Weighings;
using RigLang.Model.Checks;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks;

/// <summary>Every check there is. A new check is listed here once.</summary>
public static class AnalysisChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new UnknownReference(), new NamesNoRig(),
        .. ExpectationChecks.All,
        .. QuestionChecks.All,
        .. RatingChecks.All,
        .. LoadingChecks.All,
        .. HitchChecks.All,
        .. TyreChecks.All,
        .. HandlingChecks.All,
        .. BrakingChecks.All,
        .. LawChecks.All,
        .. UnusedChecks.All,
        .. TripChecks.All,
        .. WeighingChecks.All,
        .. RunChecks.All,
    ];

    /// <summary>The checks that look at one sort of thing, in their order.</summary>
    public static ImmutableArray<TCheck> Of<TCheck>()
        where TCheck : Check => Sorted<TCheck>.Checks;

    /// <summary>The declarations of all floors, by code.</summary>
    public static ImmutableArray<CheckDeclaration> Declarations { get; } =
    [
        .. WritingChecks.All.Concat(ModelChecks.All).Concat(All.Select(check => check.Declaration)).Concat(Allowances.Declarations).Append(ExpectationUntested.Declaration).Distinct().OrderBy(check => check.Code, StringComparer.Ordinal),
    ];

    private static readonly FrozenDictionary<string, CheckDeclaration> ByName =
        Declarations.SelectMany(check => new[] { (check.Code, check), (check.Slug, check) }).ToFrozenDictionary(pair => pair.Item1, pair => pair.check, StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, ImmutableArray<Check>> Curable =
        All.Where(check => check.Cures.Length > 0).GroupBy(check => check.Declaration.Code).ToFrozenDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>The checks with that code that say what may be changed to cure their findings: one for rigs, one for trips.</summary>
    public static ImmutableArray<Check> WithLevers(string code) => Curable.GetValueOrDefault(code, []);

    /// <summary>By code or slug.</summary>
    public static CheckDeclaration? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>Sorted out once for each base class, since each keystroke asks.</summary>
    private static class Sorted<TCheck>
        where TCheck : Check
    {
        public static readonly ImmutableArray<TCheck> Checks = [.. All.OfType<TCheck>()];
    }
}
