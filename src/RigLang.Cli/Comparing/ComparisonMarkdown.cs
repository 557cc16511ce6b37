using System.Text;
using RigLang.Cli.Checking;
using RigLang.Comparing;
using RigLang.Editing.Comparing;
using RigLang.Model.Binding;

namespace RigLang.Cli.Comparing;

/// <summary>Writes a comparison as Markdown, for a merge request or a note.</summary>
internal static class ComparisonMarkdown
{
    public static string Of(Comparison comparison, ComparisonView view, string before, string after)
    {
        var text = new StringBuilder();
        text.Append($"**{Escaped(view.Verdict)}**\n\n{Escaped(before)} → {Escaped(after)}\n");
        foreach (var file in comparison.Unread)
        {
            text.Append($"\n`{file.Name}`: {LineDifference.Errors(file)}, so its lines are shown as they are.\n\n```diff\n");
            foreach (var line in LineDifference.Changed(file))
            {
                text.Append($"{(line.Type == DiffPlex.DiffBuilder.Model.ChangeType.Inserted ? '+' : '-')} {line.Text}\n");
            }

            text.Append("```\n");
        }

        if (!view.Inputs.IsEmpty)
        {
            text.Append("\n### What went in\n\n| | what | before | now |\n| --- | --- | --- | --- |\n");
            foreach (var row in view.Inputs)
            {
                text.Append($"| {row.Sort} | {Escaped(row.Title)} | {Code(row.Before)} | {Code(row.After)} |\n");
            }
        }

        foreach (var group in view.Groups)
        {
            Append(text, group);
        }

        Append(text, comparison.Findings, comparison);
        text.Append('\n').AppendJoin(' ', view.Left.Select(Escaped)).Append('\n');
        return text.ToString();
    }

    private static void Append(StringBuilder text, ResultGroup group)
    {
        text.Append($"\n### {Escaped(group.Title)}{(group.Name is null ? "" : $": {Escaped(group.Name)}")}\n");
        if (!group.Limits.IsEmpty)
        {
            text.Append("\n| room to each limit | before | now | |\n| --- | ---: | ---: | --- |\n");
            foreach (var limit in group.Limits)
            {
                text.Append($"| {Escaped(limit.Title)} | {limit.Before} | {limit.After} | {(limit.Mark.Length == 0 ? "" : $"**{limit.Mark}**")} |\n");
            }
        }

        if (!group.Results.IsEmpty)
        {
            text.Append("\n| result | before | now | | because |\n| --- | ---: | ---: | ---: | --- |\n");
            foreach (var row in group.Results)
            {
                text.Append($"| {Escaped(row.Title)} | {row.Before} | {row.After} | {row.Difference} | {Escaped(row.Because)} |\n");
            }
        }
    }

    private static void Append(StringBuilder text, FindingChanges findings, Comparison comparison)
    {
        if (findings.New.IsEmpty && findings.Cleared.IsEmpty)
        {
            return;
        }

        text.Append("\n### What the checks say\n\n");
        foreach (var (mark, list, state) in new[] { ("new", findings.New, comparison.After), ("gone", findings.Cleared, comparison.Before) })
        {
            foreach (var finding in list)
            {
                text.Append($"- {mark} {FindingPrinter.Words(finding.Severity)} {finding.Check.Code}, {PlaceOf(finding, state)}: {Escaped(finding.Message)}\n");
            }
        }

        if (findings.Still > 0)
        {
            text.Append($"- {findings.Still} as before\n");
        }
    }

    private static string PlaceOf(Finding finding, ComparedState state) => $"`{FindingPrinter.PlaceWords(state.Workspace, state.NameOf, finding.Place)}`";

    private static string Code(string? line) => line is null ? "" : $"`{line.Replace("|", "\\|", StringComparison.Ordinal)}`";

    /// <summary>What a file says is shown and not obeyed: no link, image or heading comes of it. What stands in back quotes stays code.</summary>
    private static string Escaped(string words)
    {
        var text = new StringBuilder(words.Length);
        foreach (var c in words)
        {
            if (c is '\\' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '!' or '&')
            {
                text.Append('\\');
            }

            text.Append(c);
        }

        return text.ToString();
    }
}
