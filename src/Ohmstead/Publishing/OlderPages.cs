using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Keeps the pages of boards whose records cannot be read now: a slip in a record takes nothing away that was published, and the
/// page says that it is older.</summary>
/// <param name="target">The report.</param>
/// <param name="today">The day of the run.</param>
internal sealed class OlderPages(ReportFolder target, DateOnly today)
{
    private const string Note = "<p><strong>This page is of an earlier report: on ";

    /// <summary>Keeps them, with their pictures.</summary>
    /// <param name="records">The files of all boards.</param>
    /// <param name="read">The boards that could be read.</param>
    /// <returns>The records whose pages are older.</returns>
    public IReadOnlyList<string> Keep(IReadOnlyList<string> records, IReadOnlyList<BoardSummary> read)
    {
        var known = read.Select(board => board.Path).ToHashSet(StringComparer.Ordinal);
        var numbers = read.Select(board => board.Id.Value)
            .Concat(read.SelectMany(board => board.Formerly.Select(former => former.Value)))
            .ToHashSet(StringComparer.Ordinal);
        var older = new List<string>();
        foreach (var path in records.Where(path => !known.Contains(path)))
        {
            var number = Path.GetFileNameWithoutExtension(path);
            if (!numbers.Contains(number) && target.Kept(SiteAddress.Board(number)) is { } page)
            {
                Keep(number, Encoding.UTF8.GetString(page));
                older.Add(path);
            }
        }

        return older;
    }

    private void Keep(string number, string page)
    {
        var start = page.IndexOf("<main", StringComparison.Ordinal);
        var inside = start < 0 ? -1 : page.IndexOf('>', start) + 1;
        var isNoted = inside <= 0 || page.AsSpan(inside).StartsWith(Note, StringComparison.Ordinal);
        // Whoever reads only what the page says of itself is told, too, and first.
        var noted = isNoted
            ? page
            : page.Insert(inside, $"{Note}{IsoDate.Text(today)} the record could not be read.</strong></p>")
                .Replace(HtmlPage.StartOfSays, $"{HtmlPage.StartOfSays}Of an earlier report: ", StringComparison.Ordinal);
        target.Put(SiteAddress.Board(number), Encoding.UTF8.GetBytes(noted));
        var beside = target.Before.Where(file =>
            file.StartsWith("photos/", StringComparison.Ordinal) && page.Contains(file, StringComparison.Ordinal)
        );
        foreach (
            var file in beside
                .Append(SiteAddress.BoardData(number))
                .Append(SiteAddress.Badge(number))
                .Append(SiteAddress.Code(number))
                .Append(SiteAddress.BoardSheet(number))
                .ToArray()
        )
        {
            if (target.Kept(file) is { } bytes)
            {
                target.Put(file, bytes);
            }
        }
    }
}
