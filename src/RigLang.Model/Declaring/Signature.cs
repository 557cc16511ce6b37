using System.Collections.Immutable;
using RigLang.Quantities;

namespace RigLang.Model.Declaring;

/// <summary>The shape of a line behind its keyword.</summary>
public sealed record Signature(ImmutableArray<Slot> Slots)
{
    public const string ValueRole = "value";

    public static Signature Of(params Slot[] slots) => new([.. slots]);

    public static Signature Quantity(params QuantityKind[] kinds) => Of(new Slot(ValueRole, new QuantityForm([.. kinds])));

    public static Signature Choice(params string[] words) => Of(new Slot(ValueRole, new ChoiceForm([.. words])));

    public static Signature YesNo { get; } = Choice("yes", "no");

    public static Signature Text { get; } = Of(new Slot(ValueRole, new TextForm()));

    public static Signature Nothing { get; } = Of();

    public static Signature Reference(DeclarationKind kind) => Of(new Slot(ValueRole, new ReferenceForm(kind)));

    public static Signature Moment(MomentShape shape) => Of(new Slot(ValueRole, new MomentForm(shape)));

    /// <summary>Hours of a day, from one clock time to another; the next day's where that is earlier.</summary>
    public static Signature Hours { get; } = Of(new Slot("from", new MomentForm(MomentShape.Clock)), new Slot("to", new MomentForm(MomentShape.Clock), "to"));

    public static Signature Tyre { get; } = Of(new Slot(ValueRole, new TyreForm()));

    /// <summary>The quantity kinds of the only value, empty when the line holds something else.</summary>
    public ImmutableArray<QuantityKind> ValueKinds => Slots is [{ Form: QuantityForm form }] ? form.Kinds : [];

    /// <summary>The shape in words, for a message or a reference page: <c>NAME mass [at place] [high length]</c>.</summary>
    public string Words => Slots.IsEmpty ? "nothing" : string.Join(" ", Slots.Select(WordsOf));

    /// <summary>One part of <see cref="Words"/>.</summary>
    public static string WordsOf(Slot slot)
    {
        var what = slot.Form switch
        {
            PositionForm => "at PLACE",
            ChoiceForm { Choices.Length: 1 } choice => choice.Choices[0],
            ChoiceForm choice => string.Join("|", choice.Choices),
            NameForm or ReferenceForm or LocalNameForm => slot.Role.ToUpperInvariant(),
            TextForm or PathForm => $"\"{slot.Role.ToUpperInvariant()}\"",
            _ => slot.Role.ToUpperInvariant(),
        };
        var whole = slot.Lead is null || slot.Form is PositionForm ? what : $"{slot.Lead} {what}";
        return slot.IsOptional ? $"[{whole}]" : whole;
    }
}
