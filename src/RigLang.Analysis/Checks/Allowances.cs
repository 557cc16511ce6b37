using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks;

/// <summary>Takes out of a declaration's findings those that its <c>allow</c> lines accept, and reports the lines that accept nothing.</summary>
public static class Allowances
{
    public static CheckDeclaration AllowsNothing { get; } = new()
    {
        Code = "RL902",
        Slug = "allows-nothing",
        Severity = Severity.Warning,
        Summary = "An `allow` line accepts a finding that is not there.",
        Why = "The reason for it is gone, and the line would hide the next finding of its kind. Not said while a line that the declaration rests on is in error, or while its loads can't be computed: the finding may come back with them.",
        Bad = RigExample.Pair + "\n    allow tongue-below-usual because \"the maker asks for 5 %\"",
        Good = RigExample.Pair,
        Fix = "Delete the line.",
        CanBeAllowed = false,
    };

    public static CheckDeclaration UnknownCheck { get; } = new()
    {
        Code = "RL903",
        Slug = "unknown-check",
        Severity = Severity.Error,
        Summary = "An `allow` line names no check, or one that can't be accepted.",
        Why = "It was meant to accept a finding, which is still there under its own name.",
        Bad = """
            rig solo
                vehicle van
                allow tongue-too-light because "the maker asks for 5 %"
            """,
        Good = """
            rig solo
                vehicle van
                allow tongue-below-usual because "the maker asks for 5 %"
            """,
        Fix = "Write the slug or code that stands behind the finding's message.",
        CanBeAllowed = false,
    };

    public static ImmutableArray<CheckDeclaration> Declarations => [AllowsNothing, UnknownCheck];

    /// <summary>The findings that remain, and those that were accepted with the line that accepts them.</summary>
    /// <param name="declaration">Whose lines accept.</param>
    /// <param name="findings">All that there is to report of it.</param>
    /// <param name="canBeJudged">Whether everything came out that its checks look at. While it didn't, nobody knows whether a line accepts something.</param>
    public static (ImmutableArray<Finding> Remaining, ImmutableArray<(Finding Finding, Fact Allow)> Accepted) Apply(
        Declaration declaration, IEnumerable<Finding> findings, Func<bool> canBeJudged)
    {
        if (declaration.Allows is [])
        {
            return ([.. findings], []);
        }

        var allows = declaration.Allows.Select(allow => (allow.Block, allow.Line, Check: CheckOf(allow.Line))).ToList();
        var remaining = ImmutableArray.CreateBuilder<Finding>();
        var accepted = ImmutableArray.CreateBuilder<(Finding, Fact)>();
        foreach (var finding in findings)
        {
            var allow = finding.Check.CanBeAllowed
                ? allows.FirstOrDefault(allow => allow.Check == finding.Check && allow.Line.IsComplete && Covers(declaration, allow.Block, finding.Place))
                : default;
            if (allow.Line is { } line)
            {
                accepted.Add((finding, line));
            }
            else
            {
                remaining.Add(finding);
            }
        }

        foreach (var (_, line, check) in allows.Where(allow => allow.Line.Values.ContainsKey("check") && allow.Line.Place.Declaration == declaration.Own.Syntax))
        {
            if (check is null || !check.CanBeAllowed)
            {
                remaining.Add(Unknown(line, check));
            }
            else if (!accepted.Any(pair => ReferenceEquals(pair.Item2, line)) && canBeJudged())
            {
                remaining.Add(new Finding(AllowsNothing, line.Place, $"Nothing here is reported as `{line.WordOf("check")}` any more. Delete the line.")
                {
                    Fixes = [new Fix("Delete the line", line.Place, "")],
                });
            }
        }

        return (remaining.ToImmutable(), accepted.ToImmutable());
    }

    private static CheckDeclaration? CheckOf(Fact allow) => allow.WordOf("check") is { } name ? AnalysisChecks.Find(name) : null;

    /// <summary>An allow in the declaration covers all of it; one in a block covers the lines of that block.</summary>
    private static bool Covers(Declaration declaration, Block block, Place place)
    {
        if (ReferenceEquals(block, declaration.Block))
        {
            return true;
        }

        return block.Facts.Append(block.Opener!).Any(line => line.Place.Declaration == place.Declaration && line.Place.Line == place.Line);
    }

    private static Finding Unknown(Fact line, CheckDeclaration? check)
    {
        var name = line.WordOf("check")!;
        var place = line.PlaceOf("check");
        if (check is not null)
        {
            return new Finding(UnknownCheck, place, $"`{name}` can't be accepted: no reason makes it right. Mend what it reports.");
        }

        var near = Spelling.Nearest(name, AnalysisChecks.Declarations.Where(known => known.CanBeAllowed).Select(known => known.Slug));
        return near is null
            ? new Finding(UnknownCheck, place, $"No check is called `{name}`. The slug stands behind each finding's message.")
            : new Finding(UnknownCheck, place, $"No check is called `{name}`. Did you mean `{near}`?") { Fixes = [new Fix($"Write `{near}`", place, near)] };
    }
}
