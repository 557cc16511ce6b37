namespace RigLang.Syntax.Scanning;

/// <summary>
/// The class of an atom. The value is the character that the grammar's parsers see in its place, so a line reads to them as
/// <c>wNU@NUww</c>; that keeps Sprache, which parses characters, within a microsecond or two a line.
/// </summary>
internal enum AtomKind : ushort
{
    /// <summary>A name or a word that joins nothing in the line grammar itself.</summary>
    Word = 'w',
    For = 'f',
    Least = 'l',
    Most = 'm',
    Within = 'i',
    At = '@',
    Like = 'L',

    Text = '"',
    Number = 'N',

    /// <summary>A number before <c>x</c>.</summary>
    Count = 'k',

    /// <summary>A number whose unit goes on with the quantity before it: the 4 of <c>33 ft 4 in</c>.</summary>
    SmallerNumber = 'n',
    Unit = 'U',

    Date = 'D',
    Clock = 'C',
    Offset = 'O',
    YearWeek = 'W',

    Query = '?',
    Less = '<',
    Greater = '>',
    AtMost = '\u2264',
    AtLeast = '\u2265',
    Equal = '=',
    PlusMinus = '\u00B1',
    Dots = ':',
    Plus = '+',
    Minus = '-',
    Times = 'x',

    /// <summary>No atom of any class; reported where it was scanned.</summary>
    Stray = '!',
}
