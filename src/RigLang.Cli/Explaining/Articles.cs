using RigLang.Syntax;
using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Explaining;

/// <summary>Makes articles from declarations: nothing is said here that a declaration doesn't say.</summary>
internal static class Articles
{
    public static Article Of(CheckDeclaration check) => new(
        $"{check.Code} {check.Slug}",
        $"check, {(check.Severity switch { Severity.Error => "an error", Severity.Warning => "a warning", _ => "a note" })}",
        check.Summary,
        [
            new ArticlePart("why", check.Why),
            new ArticlePart("do", check.Fix),
            .. check.CanBeAllowed ? [new ArticlePart("or accept", $"allow {check.Slug} because \"…\"")] : ImmutableArray<ArticlePart>.Empty,
            .. check.Source is { } source ? [new ArticlePart("source", source)] : ImmutableArray<ArticlePart>.Empty,
            new ArticlePart("reported for", check.Bad, IsCode: true),
            new ArticlePart("not for", check.Good, IsCode: true),
        ]);

    public static Article Of(FactDeclaration fact) => new(
        fact.Keyword,
        $"fact of {HomeOf(fact)}",
        Phrase.Sentence(fact.Meaning),
        [
            new ArticlePart("write", $"{fact.Keyword} {fact.Signature.Words}".TrimEnd()),
            new ArticlePart("such as", $"{fact.Keyword} {fact.Example}".TrimEnd()),
            .. FormsOf(fact),
            new ArticlePart("if missing", IfMissing(fact)),
            .. fact.Aliases.IsEmpty ? ImmutableArray<ArticlePart>.Empty : [new ArticlePart("also called", string.Join(", ", fact.Aliases))],
        ]);

    public static Article Of(IResult result) => new(
        result.Name,
        $"result of {Scope(result.Scope)}",
        Phrase.Sentence(result.Title + ": " + result.Meaning),
        [
            new ArticlePart("computed as", result.Formula),
            new ArticlePart("source", result.Source),
            new ArticlePart("measured in", UnitsOf(result.Kind)),
        ]);

    public static Article Of(BlockDeclaration block) => new(
        block.Keyword,
        block.Parent is null ? "opens a declaration, in the first column" : $"opens a block in {block.Parent.Path.Replace(".", ", ", StringComparison.Ordinal)}",
        Phrase.Sentence(block.Meaning),
        [new ArticlePart("may hold", string.Join(", ", block.Facts.Select(fact => fact.Keyword)))]);

    public static Article Of(Unit unit) => new(
        unit.Symbol,
        "unit",
        Phrase.Sentence(unit.Name == unit.Symbol ? "put together from others" : unit.Name),
        [
            new ArticlePart("measures", string.Join(", ", QuantityKinds.All.Where(kind => kind.Accepts(unit)).Select(kind => kind.Name)) is { Length: > 0 } kinds ? kinds : "nothing that the language asks for"),
            .. unit.IsLinear && !unit.Dimension.IsNone && unit.Currency is null && unit.Name != unit.Symbol
                ? [new ArticlePart("is", $"{Digits(unit.Factor)} {unit.Dimension}")]
                : ImmutableArray<ArticlePart>.Empty,
        ]);

    /// <summary>One article for those that differ in nothing but where the word stands: a vehicle's axle and a trailer's.</summary>
    public static IReadOnlyList<Article> Merged(IEnumerable<Article> articles) =>
    [
        .. articles.GroupBy(article => (article.Word, article.Text, Parts: string.Join('\n', article.Parts)))
            .Select(group => group.First() with { What = string.Join("; ", group.Select(article => article.What)) }),
    ];

    private static string HomeOf(FactDeclaration fact) =>
        fact.Home.Kind is null ? fact.Home.Keyword == "everywhere" ? "every block" : "a practice, to assume"
        : string.Join(", ", fact.Home.Path.Split('.'));

    public static string Scope(ResultScope scope) => Phrase.WithArticle(scope switch
    {
        ResultScope.Reading => "reading of the scale",
        ResultScope.RunSet => "rig's runs together",
        _ => scope.ToString().ToLowerInvariant(),
    });

    private static string UnitsOf(QuantityKind kind) =>
        kind.Metric == kind.Us ? kind.Metric.Symbol is { Length: > 0 } symbol ? symbol : "a bare number" : $"{kind.Metric} or {kind.Us}";

    private static IEnumerable<ArticlePart> FormsOf(FactDeclaration fact)
    {
        foreach (var slot in fact.Signature.Slots)
        {
            yield return new ArticlePart(slot.Role.ToUpperInvariant(), slot.Form.Words);
        }

        if (fact.Plausible is { } range && fact.Kind is { } kind)
        {
            var low = QuantityWriter.Write(range.Low, kind, DisplaySystem.Metric);
            yield return new ArticlePart("usual", $"{low} .. {QuantityWriter.Write(range.High, kind, DisplaySystem.Metric)}");
        }
    }

    private static string IfMissing(FactDeclaration fact) => fact switch
    {
        { Estimate.IsDefault: true } => $"counts as {fact.Estimate.Words}",
        { Estimate: not null } => $"estimated: {fact.Else}",
        { Otherwise: not "none" } => fact.Otherwise,
        { Need: Need.Never } => "never asked for",
        _ => "nothing stands in; what needs it is not computed",
    };

    /// <summary>Enough digits to tell a unit from its neighbours.</summary>
    private static string Digits(double factor) => factor.ToString(factor < 1e-6 ? "G6" : "0.########", System.Globalization.CultureInfo.InvariantCulture);
}
