using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Comparing;

/// <summary>What two lines say, held against each other as values and not as characters.</summary>
internal static class FactText
{
    /// <summary>The statement with single blanks, without its comment.</summary>
    public static string Of(Fact line) => string.Join(' ', line.Place.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <param name="before">A line of the state before.</param>
    /// <param name="after">The line that takes its place.</param>
    /// <param name="newName">What a declaration of that kind and name is called in the state after.</param>
    public static Sameness Compare(Fact before, Fact after, Func<DeclarationKind, string, string> newName)
    {
        if (!before.IsComplete || !after.IsComplete || !before.Values.Keys.ToHashSet().SetEquals(after.Values.Keys))
        {
            return Of(before) == Of(after) ? Sameness.Same : Sameness.Different;
        }

        var worst = Of(before) == Of(after) ? Sameness.Same : Sameness.Rewritten;
        foreach (var slot in before.Declaration.Signature.Slots.Where(slot => before.Values.ContainsKey(slot.Role)))
        {
            var (was, now) = (before.Values[slot.Role], after.Values[slot.Role]);
            if (!IsSame(slot, was, now, TextOf(before, slot.Role), TextOf(after, slot.Role), newName))
            {
                return Sameness.Different;
            }
        }

        return worst;
    }

    private static bool IsSame(Slot slot, SlotValue was, SlotValue now, string wasText, string nowText, Func<DeclarationKind, string, string> newName) => (was, now) switch
    {
        (MeasureValue one, MeasureValue other) => Measure.SameRewritten(one.Measure, other.Measure),
        (PositionValue one, PositionValue other) => one.Point == other.Point && IsSamePlace(one, other),
        (WordValue one, WordValue other) when slot.Form is ReferenceForm reference => newName(reference.Kind, one.Word) == other.Word,
        (WordValue one, WordValue other) => one.Word == other.Word,
        (TextValue one, TextValue other) => one.Text == other.Text,
        (AbsentValue, AbsentValue) => true,
        _ => was.GetType() == now.GetType() && wasText == nowText,
    };

    /// <summary>"0.9 m behind ball" and "-0.9 m ahead of ball" are one place; so are 3 ft and 0.91 m, rounded.</summary>
    private static bool IsSamePlace(PositionValue one, PositionValue other) =>
        Limits.Same(one.Offset, other.Offset)
        || (one.Written is { } wasWritten && other.Written is { } nowWritten && Math.Sign(one.Offset) == Math.Sign(other.Offset)
            && Math.Sign(wasWritten.Value) == Math.Sign(nowWritten.Value) && Measure.SameRewritten(wasWritten, nowWritten));

    private static string TextOf(Fact line, string role) => string.Join(' ', line.PlaceOf(role).Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>How much alike two lines are.</summary>
internal enum Sameness
{
    Same,

    /// <summary>The same values in other words or units.</summary>
    Rewritten,
    Different,
}
