using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A value has another form than its keyword takes.</summary>
public static class WrongForm
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL154",
        Slug = "wrong-form",
        Severity = Severity.Error,
        Summary = "A value has another form than its keyword takes.",
        Why = "A word where a length should stand can mean anything; the line waits until it is clear.",
        Bad = """
            vehicle van
                wheelbase long
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the form that the message names.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, FactDeclaration fact, Slot slot) => Report(place, fact, slot.Form);

    /// <summary>A difference where a range can stand: the minus is meant for a dash.</summary>
    public static Finding ReportRange(Place place, FactDeclaration fact, string low, string high)
    {
        var written = $"{low} .. {high}";
        return new Finding(Declaration, place, $"`{place.Text}` is a difference, and `{fact.Keyword}` takes a bound or a range. A range is written with two dots: `{written}`.")
        {
            Fixes = [new Fix($"Write `{written}`", place, written)],
        };
    }

    public static Finding Report(Place place, FactDeclaration fact, SlotForm form)
    {
        var found = place.Text;
        if (form is ChoiceForm { Choices: var choices } && Spelling.Nearest(found, choices) is { } near)
        {
            return new Finding(Declaration, place, $"`{found}` is no choice of `{fact.Keyword}`; it takes {form.Words}.")
            {
                Fixes = [new Fix($"Write `{near}`", place, near)],
            };
        }

        return new Finding(Declaration, place, $"`{found}` doesn't fit here: `{fact.Keyword}` takes {form.Words}, for instance `{fact.Keyword} {fact.Example}`.");
    }
}
