using System.Text;
using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Corpora;

/// <summary>
/// Files that others collected because programs stumbled over them: suites of YAML and of JSON, lists of naughty strings.
/// <c>tests/corpora.sh FOLDER</c> runs those that lie in a folder; without one the few lines below stand for them. Each file is a record, a
/// file of the workshop, a story, and each of its lines a value. Whatever it holds, the check ends as it should, says so in one whole
/// document, and gives each finding a place and a next step.
/// </summary>
public sealed class CorporaTests
{
    private const int LargestFile = 1 << 20;
    private const int MostLines = 2_000;
    private const int BoardsAtOnce = 400;

    private static readonly string[] FewLines =
    [
        "undefined",
        "nil",
        "\\",
        "$HOME",
        "%s%n",
        "{{7*7}}",
        "../../etc/passwd",
        "' OR 1=1 --",
        "<script>alert(1)</script>",
        "[a](javascript:alert(1))",
        "<img src=x onerror=alert(1)>",
        "1e309",
        "-0",
        "0x7fffffff",
        "1/0",
        "NaN",
        "Ω≈ç√∫",
        "田中さん",
        "👾 🙇",
        "\u202Etest\u202C",
        "T\u0338\u0489h\u0321e",
        "\uFEFFa",
        "a\u0000b",
        "a\u001B[31mb",
        "=1+1",
        "CON",
        "- - - a",
        "? a\n: b",
        "&a [*a]",
        "{a: {b: {c: [1, 2, {d: e",
        "!!binary aGk=",
        "%YAML 1.2",
        "--- a\n...",
        "\"\\uD83D\\uDE00\"",
        "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
        "#",
        "key: |2-\n  a\n b",
        "\t- a",
    ];

    [Fact]
    public void Whatever_a_corpus_holds_the_check_ends_as_it_should()
    {
        var boards = 0;
        foreach (var batch in Boards().Chunk(BoardsAtOnce))
        {
            using var copy = CollectionCopy.Empty();
            Directory.CreateDirectory(copy.At("boards"));
            for (var number = 0; number < batch.Length; number++)
            {
                File.WriteAllBytes(copy.At($"boards/SP-{number:0000}.md"), batch[number]);
            }

            if (batch.Length > 1)
            {
                File.WriteAllBytes(copy.At("stock.yaml"), batch[boards % batch.Length]);
            }

            Holds(copy);
            boards += batch.Length;
        }

        Assert.NotEqual(0, boards);
        TestContext.Current.TestOutputHelper?.WriteLine($"{boards} records");
    }

    private static void Holds(CollectionCopy copy)
    {
        var run = Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-11-25");
        Assert.True(run.Exit is 0 or 1 or 3, $"exit {run.Exit}: {run.Error}");
        using var document = JsonDocument.Parse(run.Out);
        Assert.Equal(run.Exit, document.RootElement.GetProperty("exit").GetInt32());
        foreach (var finding in document.RootElement.GetProperty("findings").EnumerateArray())
        {
            Assert.True(
                finding.GetProperty("line").GetInt32() > 0
                    && finding.GetProperty("column").GetInt32() > 0
                    && finding.GetProperty("next").GetString() is { Length: > 0 },
                finding.ToString()
            );
        }
    }

    private static IEnumerable<byte[]> Boards()
    {
        foreach (var content in Contents())
        {
            yield return content;
            yield return [.. "---\n"u8, .. content, .. "\n---\n"u8];
            yield return [.. "---\nboard: SP-0001\ntitle: x\n---\n"u8, .. content];
            foreach (var line in Encoding.Latin1.GetString(content).Split('\n').Take(MostLines))
            {
                var bytes = Encoding.Latin1.GetBytes(line);
                yield return
                [
                    .. "---\nboard: SP-0001\ntitle: x\nnote: "u8,
                    .. bytes,
                    .. "\nparts:\n  - { ref: R1, kind: carbon film resistor, resistance: "u8,
                    .. bytes,
                    .. " }\n---\n"u8,
                ];
            }
        }
    }

    private static IEnumerable<byte[]> Contents()
    {
        if (Environment.GetEnvironmentVariable("OHMSTEAD_CORPORA") is not { Length: > 0 } folder)
        {
            return FewLines.Select(Encoding.UTF8.GetBytes);
        }

        return Files(folder);
    }

    /// <summary>The texts of the files in a folder, the front matter of records, and the YAML that the files of the YAML test suite
    /// hold.</summary>
    internal static IEnumerable<string> FilesOf(string folder) =>
        Files(folder)
            .Select(bytes => Encoding.UTF8.GetString(bytes))
            .SelectMany<string, string>(text =>
                text.Contains("\n  yaml: |\n", StringComparison.Ordinal) ? [text, .. Cases(text)]
                : text.StartsWith("---\n", StringComparison.Ordinal) ? [text, text[4..].Split("\n---\n")[0] + "\n"]
                : [text]
            );

    // As the suite writes them: invisible characters are shown by signs of their own.
    private static IEnumerable<string> Cases(string suite) =>
        from part in suite.Split("\n  yaml: |\n").Skip(1)
        let lines = part.Split('\n').TakeWhile(line => line.Length == 0 || line.StartsWith("    ", StringComparison.Ordinal))
        let text = string.Join('\n', lines.Select(line => line.Length < 4 ? string.Empty : line[4..])).TrimEnd('\n') + "\n"
        select text.Replace("␣", " ", StringComparison.Ordinal)
            .Replace("»", "\t", StringComparison.Ordinal)
            .Replace("—", string.Empty, StringComparison.Ordinal)
            .Replace("←", "\r", StringComparison.Ordinal)
            .Replace("⇔", "\uFEFF", StringComparison.Ordinal)
            .Replace("↵", string.Empty, StringComparison.Ordinal)
            .Replace("∎\n", string.Empty, StringComparison.Ordinal);

    private static IEnumerable<byte[]> Files(string folder)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint };
        return Directory
            .EnumerateFiles(folder, "*", options)
            .Where(file => !file.Contains("/.git/", StringComparison.Ordinal) && new FileInfo(file).Length <= LargestFile)
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllBytes);
    }
}
