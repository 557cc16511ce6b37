using System.Collections.Immutable;
using RigLang.Model.Declaring;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>
/// Goes along a signature with the arguments that stand before the caret, and tells what may come next: the slot in which the caret is, and the joining
/// words of phrases not yet said. Forgiving: an argument that fits nothing is passed over, as it has a finding of its own.
/// </summary>
internal sealed class SlotWalk
{
    private readonly ImmutableArray<ArgumentSyntax> arguments;
    private readonly List<Slot> open;
    private int index;

    private SlotWalk(ImmutableArray<ArgumentSyntax> arguments, Signature signature)
    {
        this.arguments = arguments;
        open = [.. signature.Slots.Where(slot => slot.Lead is not null)];
    }

    /// <summary>Slots whose value may begin at the caret, the likeliest first.</summary>
    public List<Slot> Next { get; } = [];

    /// <summary>Joining words that may stand at the caret.</summary>
    public IEnumerable<string> Leads => MayLead ? open.Select(slot => slot.Lead!) : PositionWords;

    /// <summary>The slot of the last argument, whose unit or rest may be still to come.</summary>
    public Slot? Last { get; private set; }

    /// <summary>The phrases not yet said, where one may begin at the caret.</summary>
    public IEnumerable<Slot> Phrases => MayLead ? open : [];

    /// <summary>What a position still lacks: <c>behind</c> and <c>ahead of</c>, or nothing.</summary>
    public IReadOnlyList<string> PositionWords { get; private set; } = [];

    /// <summary>The caret is where a point's name is wanted.</summary>
    public bool WantsPoint { get; private set; }

    private bool MayLead { get; set; }

    public static SlotWalk Along(Signature signature, ImmutableArray<ArgumentSyntax> arguments)
    {
        var walk = new SlotWalk(arguments, signature);
        walk.Run([.. signature.Slots.Where(slot => slot.Lead is null)]);
        return walk;
    }

    private void Run(ImmutableArray<Slot> positional)
    {
        for (var slot = 0; slot < positional.Length; slot++)
        {
            if (index >= arguments.Length)
            {
                Next.AddRange(positional.Skip(slot).Take(1));
                Next.AddRange(positional.Skip(slot + 1).TakeWhile((_, later) => positional[slot + later].IsOptional));
                MayLead = positional.Skip(slot).All(later => later.IsOptional);
                return;
            }

            if (Fits(positional[slot].Form, arguments[index]))
            {
                Last = positional[slot];
                index++;
                SkipWords(positional[slot].Form);
            }
            else if (!positional[slot].IsOptional)
            {
                index++;
            }
        }

        RunPhrases();
    }

    private void RunPhrases()
    {
        MayLead = true;
        while (index < arguments.Length)
        {
            var phrase = arguments[index++] is WordSyntax word ? open.Find(slot => slot.Lead == word.Text) : null;
            if (phrase is null)
            {
                continue;
            }

            open.Remove(phrase);
            Last = phrase;
            if (phrase.Form is PositionForm ? !RunPosition() : !RunValue(phrase))
            {
                MayLead = false;
                return;
            }
        }
    }

    private bool RunValue(Slot phrase)
    {
        if (index >= arguments.Length)
        {
            Next.Add(phrase);
            return false;
        }

        if (Fits(phrase.Form, arguments[index]))
        {
            index++;
        }

        return true;
    }

    /// <summary>False where the position isn't finished at the caret.</summary>
    private bool RunPosition()
    {
        if (index >= arguments.Length)
        {
            WantsPoint = true;
            return false;
        }

        if (arguments[index++] is not MeasureSyntax)
        {
            return true;
        }

        if (index >= arguments.Length)
        {
            PositionWords = ["behind", "ahead of"];
            return false;
        }

        var direction = (arguments[index++] as WordSyntax)?.Text;
        if (direction == "ahead")
        {
            if (index >= arguments.Length)
            {
                PositionWords = ["of"];
                return false;
            }

            index++;
        }

        if (index >= arguments.Length)
        {
            WantsPoint = true;
            return false;
        }

        index++;
        return true;
    }

    private void SkipWords(SlotForm form)
    {
        while (form is KeywordForm or ScaledAxlesForm && index < arguments.Length && arguments[index] is WordSyntax)
        {
            index++;
        }

        if (form is ScaledAxlesForm && index >= arguments.Length)
        {
            Next.Add(Last!);
        }
    }

    private static bool Fits(SlotForm form, ArgumentSyntax argument) => (form, argument) switch
    {
        (QuantityForm or QuantityOrNoneForm, MeasureSyntax or QuerySyntax) => true,
        (QuantityOrNoneForm, WordSyntax { Text: "none" }) => true,
        (ChoiceForm choice, WordSyntax word) => choice.Choices.Contains(word.Text),
        (NameForm or ReferenceForm or LocalNameForm or ResultNameForm or CheckNameForm or KeywordForm or ScaledAxlesForm, WordSyntax) => true,
        (TextForm or PathForm, TextSyntax) => true,
        (TyreForm, TyreSyntax) => true,
        (MomentForm, MomentSyntax) => true,
        (BoundForm, BoundSyntax or RangeSyntax or MeasureSyntax) => true,
        (AnyValueForm, MeasureSyntax or WordSyntax) => true,
        _ => false,
    };
}
