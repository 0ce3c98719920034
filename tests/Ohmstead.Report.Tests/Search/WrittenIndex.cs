using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Search;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Search;

/// <summary>The files of an index, read back without the script.</summary>
internal sealed partial class WrittenIndex : IReportFiles
{
    private readonly Dictionary<string, string> files = new(StringComparer.Ordinal);

    /// <summary>The files by their path.</summary>
    public IReadOnlyDictionary<string, string> Files => files;

    /// <summary>The names of the pages, in the order in which they are found.</summary>
    public string[] Names => [.. Pages().SelectMany(piece => piece).Select(page => page[0].GetString()!)];

    /// <summary>Writes the index of boards, which are taken in the given order.</summary>
    /// <param name="records">The records.</param>
    /// <param name="findings">Findings on other files.</param>
    /// <param name="story">The story of every board, whatever is in it; null for that of its record.</param>
    public static WrittenIndex Of(IEnumerable<string> records, ImmutableArray<Finding> findings = default, string? story = null)
    {
        var shop = Workshop.Empty;
        JudgedBoard[] boards =
        [
            .. records.Select(record => Judged.Board(record, shop, path: $"boards/{record.Split('\n')[1].Split(' ')[1]}.md")),
        ];
        if (story is not null)
        {
            boards = [.. boards.Select(board => Judged.Board(board.Board with { Body = story }, shop))];
        }

        var context = new ReportContext(shop, new HashSet<string>(StringComparer.Ordinal), Judged.Today, "0.0.0");
        var collector = new SearchCollector(new KeptInMemory());
        using var buffer = new PageBuffer();
        foreach (var board in boards)
        {
            collector.Add(context, board, buffer);
        }

        var index = new WrittenIndex();
        BoardSummary[] summaries =
        [
            .. boards.Select(board => BoardSummary.From(board)).OrderBy(board => board.Path, StringComparer.Ordinal),
        ];
        collector.Write(index, context, summaries, findings.IsDefault ? [] : findings, []);
        return index;
    }

    /// <summary>What a file assigns.</summary>
    public JsonElement Read(string name)
    {
        var script = files[$"search/{name}.js"];
        var start = $"(globalThis.ohmsteadPieces ??= {{}}).{name} = ";
        Assert.StartsWith(start, script, StringComparison.Ordinal);
        Assert.EndsWith(";\n", script, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(script[start.Length..^2]);
        return json.RootElement.Clone();
    }

    /// <summary>The files of a kind, in order: what each holds once its signs are put back.</summary>
    public IEnumerable<string> Pieces(string kind)
    {
        for (var number = 1; files.ContainsKey(string.Create(CultureInfo.InvariantCulture, $"search/{kind}{number}.js")); number++)
        {
            var piece = Read(string.Create(CultureInfo.InvariantCulture, $"{kind}{number}"));
            yield return Signs().Replace(piece[0].GetString()!, sign => piece[1 + Place(sign.Value)].GetString()!);
        }
    }

    /// <summary>The lists of words of a kind of file.</summary>
    public IEnumerable<string[]> Words(string kind) =>
        Pieces(kind).Select(piece => JsonSerializer.Deserialize<string>($"\"{piece}\"")!.Split(' '));

    /// <summary>The pages of each file.</summary>
    public IEnumerable<JsonElement[]> Pages() => Pieces("p").Select(piece => JsonSerializer.Deserialize<JsonElement[]>($"[{piece}]")!);

    /// <summary>All tokens with what is written beside each, in order.</summary>
    public IReadOnlyList<(string Token, string Held)> Tokens() =>
        [.. Words("w").SelectMany(words => words.Chunk(2)).Select(pair => (pair[0], pair[1]))];

    /// <summary>The names of the pages that hold a token.</summary>
    public IEnumerable<string> Holding(string token)
    {
        var held = Tokens().SingleOrDefault(pair => pair.Token == token).Held ?? string.Empty;
        var (page, at) = (-1, 0);
        while (at < held.Length)
        {
            var gap = 0;
            for (; char.IsAsciiLetterLower(held[at]) || char.IsAsciiDigit(held[at]); at++)
            {
                gap = (gap * 36) + (held[at] <= '9' ? held[at] - '0' : held[at] - 'a' + 10);
            }

            page += gap;
            while (at < held.Length && (char.IsAsciiLetterUpper(held[at]) || held[at] == '*'))
            {
                at++;
            }

            yield return Names[page];
        }
    }

    [GeneratedRegex("[+&].", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Signs();

    private string Text(string name) => Read("index").GetProperty(name).GetString()!;

    private int Place(string sign) =>
        (Text("starts").IndexOf(sign[0], StringComparison.Ordinal) * Text("ends").Length)
        + Text("ends").IndexOf(sign[1], StringComparison.Ordinal);

    /// <inheritdoc/>
    public void Put(string path, ReadOnlySpan<byte> bytes) => files.Add(path, Encoding.UTF8.GetString(bytes));

    /// <inheritdoc/>
    public FileStream Start(string path) => throw new NotSupportedException();

    /// <inheritdoc/>
    public void Put(string path, FileStream started) => throw new NotSupportedException();
}
