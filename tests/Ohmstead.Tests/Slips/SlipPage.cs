using System.Globalization;
using System.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Slips;

/// <summary>The page of the slips: what is written, what is told, and how a reader fares with it.</summary>
internal static class SlipPage
{
    /// <summary>A finding as the cases tell it.</summary>
    public static string Told(ShownFinding finding) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{finding.Line}:{finding.Column} {finding.Severity} {finding.Check}: {finding.Message}"
        );

    /// <summary>The page.</summary>
    public static string Write(IReadOnlyList<Slip> slips)
    {
        var page = new StringBuilder();
        page.Append("# What slips are told\n\nWritten by the tests from the cases beside it; OHMSTEAD_WRITE=1 writes it anew. ");
        page.Append(
            "Whether the line is right, the cause named and the slip mended at\nfirst try is judged by a person who reads the "
                + "message alone; "
        );
        page.Append(
            "that there is one message, that the text it leads to has no finding, and that nothing is\nlost by it, the tests see.\n\n"
        );
        page.Append("| Theme | Slips | Right line | Cause named | One message | Mended at first try |\n|---|---|---|---|---|---|\n");
        foreach (var theme in slips.GroupBy(slip => slip.Theme))
        {
            page.Append(Row(theme.Key, [.. theme]));
        }

        page.Append(Row("**all**", slips));
        foreach (var theme in slips.GroupBy(slip => slip.Theme))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n## {theme.Key}\n\n| Slip | Written | Told | What to do | Mended |\n|---|---|---|---|---|\n"
            );
            foreach (var slip in theme)
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {slip.Name} | {Cell(slip.Put)} | {Text(slip.Told)} | {Text(slip.Next)} | {(slip.Judged.Mended ? "yes" : "no")} |\n"
                );
            }
        }

        return page.ToString();
    }

    private static string Row(string name, IReadOnlyList<Slip> slips) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {slips.Count} | {slips.Count(slip => slip.Judged.Line)} | {slips.Count(slip => slip.Judged.Cause)} | "
                + $"{slips.Count} | {slips.Count(slip => slip.Judged.Mended)} |\n"
        );

    private static string Cell(string written) =>
        $"<code>{string.Join("<br>", written.Split('\n').Select(line => Text(line.Trim(' '))))}</code>";

    private static string Text(string text) =>
        string.Concat(text.Select(Shown))
            .Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace("|", "&#124;", StringComparison.Ordinal)
            .Replace("*", "&#42;", StringComparison.Ordinal)
            .Replace("[", "&#91;", StringComparison.Ordinal)
            .Replace("]", "&#93;", StringComparison.Ordinal)
            .Replace("`", "&#96;", StringComparison.Ordinal);

    // What nobody would see is named.
    private static string Shown(char letter) =>
        char.IsControl(letter) || letter is '\u00A0' or '\u00AD' or '\u200B'
            ? string.Create(CultureInfo.InvariantCulture, $"‹U+{(int)letter:X4}›")
            : letter.ToString();
}
