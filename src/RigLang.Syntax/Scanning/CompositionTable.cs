using System.Globalization;

namespace RigLang.Syntax.Scanning;

/// <summary>The figures of <c>Composition.txt</c>, read when the first name needs them.</summary>
internal static class CompositionTable
{
    private static readonly List<(int First, int Last, int Class)> Classes = [];

    static CompositionTable()
    {
        using var stream = typeof(CompositionTable).Assembly.GetManifestResourceStream("RigLang.Syntax.Scanning.Composition.txt")!;
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (!line.StartsWith('#'))
            {
                Read(line);
            }
        }
    }

    /// <summary>What a character is taken apart into; a second part of 0 means that it only stands for another character.</summary>
    public static Dictionary<int, (int First, int Second)> Parts { get; } = [];

    /// <summary>What two characters are put together into.</summary>
    public static Dictionary<(int First, int Second), int> Wholes { get; } = [];

    /// <summary>The combining class: 0 for what marks are put on.</summary>
    public static int ClassOf(int point)
    {
        var (low, high) = (0, Classes.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            if (point < Classes[middle].First)
            {
                high = middle - 1;
            }
            else if (point > Classes[middle].Last)
            {
                low = middle + 1;
            }
            else
            {
                return Classes[middle].Class;
            }
        }

        return 0;
    }

    private static void Read(string line)
    {
        var fields = line.TrimStart('@', '!').Split(' ');
        var (first, second) = (Hex(fields[0]), Hex(fields[1]));
        if (line[0] == '@')
        {
            Classes.Add((first, second, int.Parse(fields[2], NumberStyles.None, CultureInfo.InvariantCulture)));
            return;
        }

        var third = fields.Length > 2 ? Hex(fields[2]) : 0;
        Parts.Add(first, (second, third));
        if (third != 0 && line[0] != '!')
        {
            Wholes.Add((second, third), first);
        }
    }

    private static int Hex(string digits) => int.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
