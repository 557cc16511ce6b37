using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>A fact: its value in both systems, what it means, how it is written, what stands in without it.</summary>
internal static class FactCard
{
    public static CardText Of(Spot spot, FactDeclaration declared)
    {
        var card = new CardText();
        var owner = spot.Block is { } block ? BlockWords.Of(block) : "";
        card.Paragraph(owner.Length > 0 ? $"**{spot.Fact!.Title}** of {owner}" : $"**{declared.Keyword}**");
        if (spot.Fact is { } line)
        {
            card.Paragraph(ValueOf(line)).Paragraph(line.Query is { Query.Goal: QueryGoal.None } ? StandIns.For(spot, declared) : "").Paragraph(InPlaceOf(spot, line));
        }

        return Describe(card, declared);
    }

    public static CardText OfKeyword(FactDeclaration declared) => Describe(new CardText().Paragraph($"**{declared.Keyword}** in {Where(declared)}"), declared);

    /// <summary>"2.94 m (115.7 in)"; empty for what is no quantity.</summary>
    public static string ValueOf(Fact line)
    {
        var measures = line.Values.Values.OfType<MeasureValue>().OrderBy(value => value.Span.Start).Select(value => Both(value.Measure)).ToList();
        return measures.Count > 0 ? string.Join(", ", measures)
            : line.Value is AbsentValue ? "none: known to be absent"
            : line.Query is { Query.Goal: QueryGoal.None } ? "asked and not known"
            : line.Query is not null ? $"asked for with {BlockWords.Wish(line)}"
            : "";
    }

    /// <summary>As its author wrote it, and in the other system.</summary>
    public static string Both(Measure measure)
    {
        var plain = QuantityWriter.WriteLike(measure.Value, measure);
        var text = measure.Text.Contains(" x ", StringComparison.Ordinal) || measure.Text.Contains(" + ", StringComparison.Ordinal) ? $"{measure.Text} = {plain}" : measure.Text;
        return QuantityWriter.WriteInOtherSystem(measure) is { } other ? $"{text} ({other})" : text;
    }

    private static CardText Describe(CardText card, FactDeclaration declared)
    {
        card.Paragraph(Phrase.Capital(declared.Meaning));
        var form = declared.Signature.Slots switch
        {
            [] => "",
            [{ Lead: null, Form: var only }] => $"Behind it stands {only.Words}, for instance `{declared.Keyword} {declared.Example}`",
            _ => $"Written `{declared.Keyword} {declared.Signature.Words}`, for instance `{declared.Keyword} {declared.Example}`",
        };
        var facts = new List<string>();
        if (form.Length > 0)
        {
            facts.Add(form);
        }

        if (declared.Need == Need.ForVerdict)
        {
            facts.Add("Wanted for the first verdict: axle loads and ratings");
        }

        if (declared.Else != "none")
        {
            facts.Add($"Without it: {declared.Else}{(declared.Estimate is { IsDefault: false } ? $", and every result that reads it is marked {Shown.Estimated}" : "")}");
        }
        else if (declared.Need != Need.Never)
        {
            facts.Add("Without it the results that need it are not computed");
        }

        if (!declared.Aliases.IsEmpty)
        {
            facts.Add($"Also called {string.Join(", ", declared.Aliases.Select(alias => alias.Replace('-', ' ')))}");
        }

        return card.Bullets(facts);
    }

    private static string Where(FactDeclaration declared) => declared.Home.Path.Replace('.', ' ');

    /// <summary>Under <c>like</c>: which line this one takes the place of.</summary>
    private static string InPlaceOf(Spot spot, Fact line)
    {
        if (spot.Linked?.Parent is not { } parent || spot.Block is not { } block)
        {
            return "";
        }

        var inherited = parent.Block.WithInner().FirstOrDefault(other => Tail(other) == Tail(block))?.Facts.FirstOrDefault(other => other.Title == line.Title);
        return inherited is null
            ? $"Added to what {parent} has"
            : $"In place of `{BlockWords.Value(inherited)}` of {parent} ({PlaceMap.Words(spot.State.Workspace, inherited.Place, spot.File.Id)})";
    }

    private static string Tail(Block block) => block.Path.IndexOf('/', block.Path.IndexOf('#', StringComparison.Ordinal)) is var slash and >= 0 ? block.Path[slash..] : "";
}
