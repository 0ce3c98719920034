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
    /// <param name="slips">Slips in records.</param>
    /// <param name="typed">Slips on command lines and at the prompt of the bench.</param>
    public static string Write(IReadOnlyList<Slip> slips, IReadOnlyList<TypedSlip> typed)
    {
        var page = new StringBuilder();
        page.Append("# What slips are told\n\nWritten by the tests from the cases beside it; OHMSTEAD_WRITE=1 writes it anew. ");
        page.Append(
            "Whether the place is right (the line and column, the word of a\ncommand line), the cause named and the slip mended at "
                + "first try is judged by a person who reads the message alone; "
        );
        page.Append(
            "that there is one message, that the text it leads to\nhas no finding, and that nothing is lost by it, the tests see. "
                + "*In own words* stands where the reader alone can know a word of the mended line, such as a figure.\n\n"
        );
        page.Append("| Theme | Slips | Right place | Cause named | One message | Mended at first try |\n|---|---|---|---|---|---|\n");
        foreach (var theme in slips.GroupBy(slip => slip.Theme))
        {
            page.Append(Row(theme.Key, [.. theme.Select(slip => slip.Judged)]));
        }

        foreach (var theme in typed.GroupBy(slip => slip.Theme))
        {
            page.Append(Row(theme.Key, [.. theme.Select(slip => slip.Judged)]));
        }

        page.Append(Row("**all**", [.. slips.Select(slip => slip.Judged), .. typed.Select(slip => slip.Judged)]));
        foreach (var theme in slips.GroupBy(slip => slip.Theme))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n## {theme.Key}\n\n| Slip | Written | Told | What to do | Mended |\n|---|---|---|---|---|\n"
            );
            foreach (var slip in theme)
            {
                var mended = Mended(slip.Judged.Mended, slip.IsInOwnWords);
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {slip.Name} | {Cell(slip.Put)} | {Text(slip.Told)} | {Text(slip.Next)} | {mended} |\n"
                );
            }
        }

        Typed(page, typed);
        return page.ToString();
    }

    private static string Row(string name, IReadOnlyList<(bool Place, bool Cause, bool Mended)> judged) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {judged.Count} | {judged.Count(one => one.Place)} | {judged.Count(one => one.Cause)} | "
                + $"{judged.Count} | {judged.Count(one => one.Mended)} |\n"
        );

    private static void Typed(StringBuilder page, IReadOnlyList<TypedSlip> slips)
    {
        foreach (var theme in slips.GroupBy(slip => slip.Theme))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n## {theme.Key}\n\n| Slip | Typed | Told | Mended to | Mended |\n|---|---|---|---|---|\n"
            );
            foreach (var slip in theme)
            {
                var told = slip.Told.Where(line => !line.StartsWith("ohmstead ", StringComparison.Ordinal)).Select(line => line.Trim());
                var mended = Mended(slip.Judged.Mended, slip.IsInOwnWords);
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {slip.Name} | {Cell(slip.Typed)} | {Text(string.Join(" / ", told))} | {Cell(slip.Mended)} | {mended} |\n"
                );
            }
        }
    }

    private static string Mended(bool isMended, bool isInOwnWords) =>
        !isMended ? "no"
        : isInOwnWords ? "yes, in own words"
        : "yes";

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
