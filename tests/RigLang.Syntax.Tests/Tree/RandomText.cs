namespace RigLang.Syntax.Tests.Tree;

/// <summary>Text that looks enough like a rig file to reach every corner of the reader, and enough like junk to hurt it.</summary>
internal sealed class RandomText(int seed)
{
    private static readonly string[] Pieces =
    [
        "\n", "\n", "\n", "\n    ", "\n    ", "\n        ", "\r\n", "\r", "\t", " ", "  ", "vehicle van", "\ntrailer wren \"Caravan\"", "\nload a like b", "\nuse \"x.rig\"", "\nlanguage 1",
        "\nrig coast", "axle front", "item driver", "84 kg", "75 lb + 60 lb", "2 x 9 kg", "± 15 kg", "+-", "..", "7 % .. 10 %", "< 95 %", ">=", "? for energy-left = 30 %", "within", "?",
        "at 1.42 m behind front-axle", "2026-10-03 08:15 +10:00", "2024-W18", "1:16", "2-5/16 in", "33 ft 4 in", "5' 6\"", "4,032", "1e5", ".5", "5.", "tyres 245/55R19 107W XL", "spare ",
        "\"", "\"text\"", "#", " # comment", "\u201Cx\u201D", "'", "\u00A0", "\u200B", "\uFEFF", "\uD83D", "\uDE97", "\uD83D\uDE97", "\0", "\u0085", "\u2028", "\u202E", "é", "e\u0301", "車", "Ä",
        "(", ")", "*", "/", "-", "–", "−5", "km / h", "N m", "x", "@", "allow RL301 because", "Front_Axle", "0", "99999999999999999999", "_", "°", "%", "²", "+09:30", "1.2.3", "08:15", ";",
    ];

    private readonly Random random = new(seed);

    public int Next(int most) => random.Next(most);

    public string Text(int most)
    {
        var text = new System.Text.StringBuilder();
        for (var count = random.Next(most); count > 0; count--)
        {
            if (random.Next(12) == 0)
            {
                text.Append((char)random.Next(char.MaxValue + 1));
            }
            else
            {
                text.Append(Pieces[random.Next(Pieces.Length)]);
            }
        }

        return text.ToString();
    }
}
