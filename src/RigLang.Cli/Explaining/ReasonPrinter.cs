using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;
using RigLang.Model.Files;

namespace RigLang.Cli.Explaining;

/// <summary>
/// Prints the answer to "why this number?": under each result its formula, then what went into it, down to the lines of the files. What was told already is
/// named again but not told again.
/// </summary>
internal sealed class ReasonPrinter(Printout print, Func<FileId, string> shown)
{
    private const int Step = 2;
    private const int Deepest = 24;

    private readonly HashSet<Reason> told = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Reason>);

    public void Print(Reason reason) => Print(reason, 0);

    private void Print(Reason reason, int depth)
    {
        var lead = new string(' ', depth * Step);
        var isNew = told.Add(reason);
        var hasMore = reason.Because.Length > 0 || reason.Note.Length > 0;
        var hang = lead.Length + (2 * Step);
        print.Wrapped(
            hang,
            lead,
            new Piece(reason.Title, reason.Sort == ReasonSort.Result ? Ink.Strong : Ink.Plain),
            reason.Value.Length > 0 ? "  " + Cells.Tied(reason.Value) : "",
            new Piece(Remark(reason), Ink.Faint),
            !isNew && hasMore ? new Piece("  (as above)", Ink.Faint) : "");
        if (!isNew)
        {
            return;
        }

        if (reason.Note.Length > 0)
        {
            print.Wrapped(hang, lead, new string(' ', Step), new Piece(Sign(reason) + reason.Note, Ink.Faint));
        }

        foreach (var because in reason.Because)
        {
            if (depth < Deepest)
            {
                Print(because, depth + 1);
            }
        }
    }

    private string Remark(Reason reason) => reason switch
    {
        { Place: { } place } => $"  {shown(place.File)}:{place.Range.Start.Line + 1}",
        { Sort: ReasonSort.Missing } => "  not written",
        _ => "",
    };

    private static string Sign(Reason reason) => reason.Sort switch
    {
        ReasonSort.Result => "= ",
        ReasonSort.Estimated => "estimated: ",
        ReasonSort.Solved => "solved: ",
        _ => "",
    };
}
