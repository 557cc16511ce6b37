namespace RigLang.Syntax.Scanning;

/// <summary>Korean syllables are made of their letters by arithmetic (The Unicode Standard, 3.12).</summary>
internal static class Hangul
{
    private const int FirstSyllable = 0xAC00;
    private const int FirstLead = 0x1100;
    private const int FirstVowel = 0x1161;
    private const int BeforeFirstTail = 0x11A7;
    private const int Leads = 19;
    private const int Vowels = 21;
    private const int Tails = 28;

    public static bool TryDecompose(int point, List<int> into)
    {
        var index = point - FirstSyllable;
        if (index is < 0 or >= Leads * Vowels * Tails)
        {
            return false;
        }

        into.Add(FirstLead + (index / (Vowels * Tails)));
        into.Add(FirstVowel + (index / Tails % Vowels));
        if (index % Tails != 0)
        {
            into.Add(BeforeFirstTail + (index % Tails));
        }

        return true;
    }

    public static int? Compose(int first, int second)
    {
        if (first is >= FirstLead and < FirstLead + Leads && second is >= FirstVowel and < FirstVowel + Vowels)
        {
            return FirstSyllable + ((((first - FirstLead) * Vowels) + (second - FirstVowel)) * Tails);
        }

        var isOpenSyllable = first is >= FirstSyllable and < FirstSyllable + (Leads * Vowels * Tails) && (first - FirstSyllable) % Tails == 0;
        return isOpenSyllable && second is > BeforeFirstTail and < BeforeFirstTail + Tails ? first + (second - BeforeFirstTail) : null;
    }
}
