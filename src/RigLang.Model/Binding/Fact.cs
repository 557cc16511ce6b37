using System.Collections.Immutable;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Model.Binding;

/// <summary>One line, understood: which fact it is and what it says.</summary>
public sealed class Fact
{
    public Fact(FactDeclaration declaration, Place place, ImmutableDictionary<string, SlotValue> values, string key)
    {
        Declaration = declaration;
        Place = place;
        Values = values;
        Key = key;
    }

    public FactDeclaration Declaration { get; }

    /// <summary>The whole statement. Under <c>like</c> it may stand in another declaration than the one that has the fact.</summary>
    public Place Place { get; }

    /// <summary>By role. A slot that couldn't be read isn't there.</summary>
    public ImmutableDictionary<string, SlotValue> Values { get; }

    /// <summary>What tells this line from others with its keyword; empty where there is nothing to tell.</summary>
    public string Key { get; }

    /// <summary>True when every slot that must be there could be read, and none only asks.</summary>
    public bool IsComplete => Declaration.Signature.Slots.All(slot => slot.IsOptional || Values.ContainsKey(slot.Role)) && !IsAsked;

    /// <summary>Whether a question mark stands in place of one of its quantities.</summary>
    public bool IsAsked => Values.Values.Any(value => value is QueryValue);

    public SlotValue? Value => Values.GetValueOrDefault(Signature.ValueRole);

    /// <summary>The query, when the line says <c>?</c>.</summary>
    public QueryValue? Query => Value as QueryValue;

    public Measure? MeasureOf(string role) => (Values.GetValueOrDefault(role) as MeasureValue)?.Measure;

    public string? WordOf(string role) => Values.GetValueOrDefault(role) switch
    {
        WordValue word => word.Word,
        TextValue text => text.Text,
        _ => null,
    };

    public TimeOnly? ClockOf(string role) => (Values.GetValueOrDefault(role) as ClockValue)?.Clock;

    public PositionValue? PositionOf(string role) => Values.GetValueOrDefault(role) as PositionValue;

    /// <summary>The place of one slot's value, or of the whole statement.</summary>
    public Place PlaceOf(string role) => Values.TryGetValue(role, out var value) ? Place with { Span = value.Span } : Place;

    /// <summary>The keyword's own place.</summary>
    public Place KeywordPlace => Place with { Span = Place.Span with { Length = Declaration.Keyword.Length } };

    /// <summary>Keyword and key: <c>item driver</c>.</summary>
    public string Title => Key.Length == 0 ? Declaration.Keyword : $"{Declaration.Keyword} {Key}";
}
