using RigLang.Model.Checks;
using RigLang.Model.Checks.Units;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>Reads the parts of a date or time that a keyword wants.</summary>
internal static class MomentSlot
{
    public static SlotValue? Read(LineReading line, MomentShape shape, MomentSyntax syntax)
    {
        if (!Fits(shape, syntax))
        {
            return null;
        }

        line.Advance();
        var problems = line.Findings.Count;
        var date = Part<DateOnly>(line, syntax.Date, MomentReader.TryReadDate);
        var clock = Part<TimeOnly>(line, syntax.Clock, MomentReader.TryReadClock);
        var offset = Part<TimeSpan>(line, syntax.Offset, MomentReader.TryReadOffset);
        var week = Part<YearWeek>(line, syntax.YearWeek, MomentReader.TryReadYearWeek);
        if (line.Findings.Count > problems)
        {
            return null;
        }

        return shape switch
        {
            MomentShape.YearWeek => new MomentValue(syntax.Span, new Moment(week!.Value.Monday)),
            MomentShape.Clock => new ClockValue(syntax.Span, clock!.Value),
            MomentShape.Offset => new OffsetValue(syntax.Span, offset!.Value),
            _ => new MomentValue(syntax.Span, new Moment(date!.Value, clock, offset)),
        };
    }

    private static bool Fits(MomentShape shape, MomentSyntax syntax) => shape switch
    {
        MomentShape.Date => syntax is { Date: not null, Clock: null, Offset: null },
        MomentShape.DateAndClock => syntax is { Date: not null },
        MomentShape.Clock => syntax is { Date: null, Clock: not null, Offset: null },
        MomentShape.Offset => syntax is { Date: null, Clock: null, Offset: not null },
        _ => syntax is { YearWeek: not null },
    };

    private delegate bool Reader<T>(ReadOnlySpan<char> text, out T value, out MomentProblem? problem);

    private static T? Part<T>(LineReading line, Token? token, Reader<T> read)
        where T : struct
    {
        if (token is not { } written)
        {
            return null;
        }

        if (read(written.Text, out var value, out var problem))
        {
            return value;
        }

        var place = line.PlaceOf(written.Span);
        line.Findings.Add(new Finding(MomentUnreadable.Declaration, place, Phrase.Sentence(problem?.Message ?? $"`{written.Text}` can't be read"))
        {
            Fixes = [.. (problem?.Suggestions ?? []).Select(text => new Fix($"Write `{text}`", place, text))],
        });
        return null;
    }
}
