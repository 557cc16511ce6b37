using System.Collections.Immutable;
using System.Globalization;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <summary>
/// Reads what stands behind <c>tyres</c> or <c>spare</c>: size, service description, marks. It has a scanner of its own because a service description
/// (<c>110L</c>) looks like a quantity.
/// </summary>
internal sealed class TyreScanner
{
    private readonly string text;
    private readonly List<LineFinding> findings;
    private readonly List<Token> words = [];

    private TyreScanner(string text, List<LineFinding> findings)
    {
        this.text = text;
        this.findings = findings;
    }

    /// <summary>True if what follows is a designation; a <c>?</c> or a plain word is read as everywhere else.</summary>
    public static bool Applies(string keyword, string text, int from)
    {
        if (keyword is not ("tyres" or "spare"))
        {
            return false;
        }

        while (from < text.Length && Characters.IsBlank(text[from]))
        {
            from++;
        }

        return from == text.Length || text[from] == '#' || Characters.IsDigit(text[from]) || TyreSizeReader.BeginsWithPrefix(text.AsSpan(from));
    }

    public static ImmutableArray<ArgumentSyntax> Scan(string text, Token keyword, out TextSpan? comment, List<LineFinding> findings)
    {
        var scanner = new TyreScanner(text, findings);
        comment = scanner.ScanWords(keyword.Span.End);
        return scanner.words.Count > 0 ? scanner.Read() : scanner.Missing(keyword);
    }

    private TextSpan? ScanWords(int at)
    {
        while (true)
        {
            while (at < text.Length && Characters.IsBlank(text[at]))
            {
                at++;
            }

            if (at == text.Length || text[at] == '#')
            {
                return at == text.Length ? null : TextSpan.FromBounds(at, text.Length);
            }

            if (words.Count >= LineTooLong.MostAtoms)
            {
                var rest = LineRest.From(text, at);
                findings.Add(LineTooLong.Of(rest.Span));
                words.Add(TokenOf(rest.Span.Start, rest.Span.End));
                at = rest.Next;
                continue;
            }

            var end = at;
            while (end < text.Length && !Characters.IsBlank(text[end]))
            {
                end++;
            }

            words.Add(TokenOf(at, end));
            at = end;
        }
    }

    private ImmutableArray<ArgumentSyntax> Missing(Token keyword)
    {
        findings.Add(TyreUnreadable.OfMissing(keyword.Span));
        return [];
    }

    private ImmutableArray<ArgumentSyntax> Read()
    {
        var (size, sizeText, next) = ReadSize();
        TyreService? service = null;
        Token? serviceText = null;
        var marks = ImmutableArray.CreateBuilder<Token>();
        foreach (var word in words.Skip(next))
        {
            if (service is null && ReadService(word) is { } found)
            {
                service = found;
                serviceText = word;
            }
            else if (IsMark(word.Text.ToUpperInvariant()))
            {
                Report(word, word.Text.ToUpperInvariant());
                marks.Add(word);
            }
            else if (!IsCut(word))
            {
                findings.Add(TyreUnreadable.OfMark(word.Span, word.Text));
            }
        }

        return [new TyreSyntax(TextSpan.FromBounds(sizeText.Span.Start, words[^1].Span.End), size, sizeText, service, serviceText, marks.ToImmutable())];
    }

    private bool IsCut(Token word) => findings.Exists(finding => finding.Check == LineTooLong.Check && finding.Span == word.Span);

    /// <summary>The size is one word; sidewalls also print it as two or three (<c>245/55 R 19</c>), which is read and reported.</summary>
    private (TyreSize? Size, Token Text, int Next) ReadSize()
    {
        var joined = "";
        for (var count = 1; count <= Math.Min(3, words.Count); count++)
        {
            joined += words[count - 1].Text;
            if (joined.Length > 24)
            {
                break;
            }

            if (TyreSizeReader.Read(joined.ToUpperInvariant()) is { } size)
            {
                var token = TokenOf(words[0].Span.Start, words[count - 1].Span.End);
                Report(token, TyreSizeReader.Canonical(joined));
                return (size, token, count);
            }
        }

        findings.Add(TyreUnreadable.OfSize(words[0].Span, words[0].Text));
        return (null, words[0], 1);
    }

    private TyreService? ReadService(Token word)
    {
        var plain = word.Text.Trim('(', ')').ToUpperInvariant();
        if (plain.Length > 10)
        {
            return null;
        }

        var symbolAt = plain.AsSpan().IndexOfAnyExceptInRange('/', '9');
        var symbol = symbolAt < 0 ? null : plain[symbolAt..];
        var indices = (symbolAt < 0 ? plain : plain[..symbolAt]).Split('/');
        if (indices.Length > 2 || !Array.TrueForAll(indices, index => index.Length is 2 or 3) || (symbol is not null && !IsSpeedSymbol(symbol)))
        {
            return null;
        }

        Report(word, plain);
        return new TyreService(Number(indices[0]), indices.Length == 2 ? Number(indices[1]) : null, symbol);
    }

    private void Report(Token typed, string meant)
    {
        if (typed.Text != meant)
        {
            findings.Add(TyreSpelling.Of(typed.Span, meant));
        }
    }

    private static bool IsSpeedSymbol(string symbol) =>
        (symbol.Length == 1 && symbol[0] is >= 'B' and <= 'Y') || (symbol.Length == 2 && symbol[0] == 'A' && symbol[1] is >= '1' and <= '8');

    private static bool IsMark(string word) => word is "XL" or "HL" or "SL" || (word.Length == 1 && word[0] is >= 'B' and <= 'G');

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private Token TokenOf(int from, int end) => new(TextSpan.FromBounds(from, end), text[from..end]);
}
