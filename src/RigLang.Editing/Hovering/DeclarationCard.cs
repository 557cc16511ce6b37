using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Editing.Hovering;

/// <summary>A declaration, wherever it is named: what it is and its headline figures.</summary>
internal static class DeclarationCard
{
    private const int MostLines = 16;

    public static CardText Of(View view, Declaration declaration, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        return declaration.Kind switch
        {
            DeclarationKind.Rig => RigCard.Of(view, view.State.Analysis.Rig(declaration)),
            DeclarationKind.Trip when view.State.Analysis.Trip(declaration) is { } trip => TripCard.Of(view, trip),
            DeclarationKind.Weighing when view.State.Analysis.Weighing(declaration) is { } weighing => WeighingCard.Of(view, weighing),
            DeclarationKind.Run when view.State.Analysis.Run(declaration) is { } run => RunCard.Of(view, run),
            DeclarationKind.Load => OfLoad(view, declaration),
            _ => OfPart(view, declaration),
        };
    }

    /// <summary>Vehicles, trailers, hitches, practices: the lines that a reader looks for first, as written.</summary>
    private static CardText OfPart(View view, Declaration declaration)
    {
        var card = Head(declaration);
        if (declaration.Kind == DeclarationKind.Practice)
        {
            return card.Table(declaration.Block.Facts.Take(MostLines).Select(line => new[] { line.Declaration.Keyword, Reasons.BlockWords.Text(line) })).Paragraph(UsedBy(view, declaration));
        }

        var lines = Headlines(declaration.Kind).SelectMany(fact => declaration.Block.WithInner().SelectMany(block => block.All(fact)));
        card.Table(lines.Take(MostLines).Select(line => new[] { Name(declaration, line), FactCard.ValueOf(line) is { Length: > 0 } value ? value : Reasons.BlockWords.Value(line) }));
        return card.Paragraph(UsedBy(view, declaration));
    }

    private static CardText OfLoad(View view, Declaration declaration)
    {
        var card = Head(declaration);
        foreach (var on in declaration.Block.AllBlocks(CargoFacts.Load.Block))
        {
            var items = on.All(CargoFacts.Load.Item).Concat(on.All(CargoFacts.Load.Fill)).ToList();
            card.Paragraph($"On {on.Key}").Table(items.Select(line => new[] { line.Key, Reasons.BlockWords.Value(line) }));
        }

        return card.Paragraph(UsedBy(view, declaration));
    }

    private static CardText Head(Declaration declaration)
    {
        var card = new CardText().Heading(declaration.ToString(), declaration.Title);
        var meaning = Vocabulary.Root(declaration.Kind).Meaning;
        var file = declaration.Own.File == BuiltInPractices.File ? "Built in. " : "";
        return card.Paragraph($"{file}{Phrase.Capital(meaning)}{(declaration.Parent is { } parent ? $"; like {parent.Name}" : "")}");
    }

    private static string UsedBy(View view, Declaration declaration)
    {
        var rigs = view.State.Rigs.Naming(declaration).Select(rig => rig.Rig.Name).Distinct().ToList();
        return rigs.Count == 0 ? "" : $"In {(rigs.Count == 1 ? "rig" : "rigs")} {string.Join(", ", rigs.Take(8))}{(rigs.Count > 8 ? " …" : "")}";
    }

    private static string Name(Declaration declaration, Fact line)
    {
        var block = declaration.Block.WithInner().First(block => block.Facts.Contains(line));
        return block.Opener is { } opener ? $"{opener.Title}, {line.Title}" : line.Title;
    }

    private static IEnumerable<FactDeclaration> Headlines(DeclarationKind kind) => kind switch
    {
        DeclarationKind.Run => [RunFacts.Rig, RunFacts.Date, RunFacts.Journey.Distance, RunFacts.Journey.Speed, RunFacts.Used],
        DeclarationKind.Trip => [TripFacts.Rig, TripFacts.Depart],
        DeclarationKind.Weighing => [WeighingFacts.Rig, WeighingFacts.Date],
        DeclarationKind.Hitch => [HitchFacts.Type, HitchFacts.TowingRating, HitchFacts.TongueRating, HitchFacts.Ball],
        _ => Vocabulary.Blocks.Where(block => block.Kind == kind).SelectMany(block => block.Facts).Where(fact => fact.Need == Need.ForVerdict && fact.Opens is null),
    };
}
