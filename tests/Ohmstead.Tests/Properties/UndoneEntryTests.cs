using System.Text;
using Ohmstead.Synthetic;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Properties;

/// <summary>Whatever was entered in a session, in whatever order and on whatever board: taken back, the record has the bytes that it
/// had.</summary>
public sealed class UndoneEntryTests
{
    private static readonly string[] Entries =
    [
        "46.1",
        "1k",
        "391uF 1.4ohm",
        "12 pass",
        "> 20",
        "open",
        "short",
        "C1 46.1uF",
        "R1 4k7",
        "always 120Hz",
        "out",
        "in",
        "unsaid",
        "back",
        "found J1 \"green legs\" minor",
        "found C1 \"a: b # c, 'd' \\\\ é 漢\" major",
        "wait \"a part, and another\"",
        "decide C1 keep \"it reads well: twice\"",
        "work cleaned C1",
        "work removed C1",
        "work resoldered R1 --note \"- a dash\"",
        "with bridge-1",
        "nonsense",
        "+5V 5.01V",
        "with no-such-bridge",
    ];

    public static TheoryData<string, string> Sessions { get; } =
        new(
            from board in Directory
                .GetFiles(Path.Combine(CollectionCopy.Untouched, "boards"), "*.md")
                .Select(Path.GetFileNameWithoutExtension)
                .Order(StringComparer.Ordinal)
            from form in new[] { "as it is", "CRLF", "no line end at the end" }
            select new TheoryDataRow<string, string>(board, form)
        );

    [Theory]
    [MemberData(nameof(Sessions))]
    public void Entries_that_are_taken_back_leave_the_bytes_that_were_there(string board, string form)
    {
        Assert.SkipUnless(
            TestExtent.IsAll || TestExtent.Of([.. Sessions.Select(row => row.Data)], usual: 12).Contains((board, form)),
            TestExtent.LeftOut
        );
        using var copy = CollectionCopy.Make();
        var path = copy.At($"boards/{board}.md");
        var text = File.ReadAllText(path);
        File.WriteAllText(
            path,
            form switch
            {
                "CRLF" => text.ReplaceLineEndings("\r\n"),
                "no line end at the end" => text.TrimEnd('\n'),
                _ => text,
            }
        );
        var before = Bytes(copy);
        var random = SeededRandom.For(20260314, 16, board.Sum(letter => letter) + form.Length);
        var typed = new StringBuilder();
        for (var entry = 0; entry < 6; entry++)
        {
            typed.Append(random.Pick(Entries)).Append('\n');
        }

        typed.Insert(typed.Length, string.Concat(Enumerable.Repeat("undo\n", 7))).Append("quit\n");
        var run = Run.Typing(typed.ToString(), "bench", board, "--in", copy.Root, "--as-of", "2026-11-25", "--by", "RK");
        Assert.True(run.Exit is 0 or 1, $"{typed}\n{run.Error}");

        // Behind the last place a walk ends by itself: then there is nobody to take anything back.
        if (run.Out.Contains("nothing of this session is left to take back", StringComparison.Ordinal))
        {
            Assert.Equal(before, Bytes(copy));
        }
        else
        {
            Assert.DoesNotContain("taken back", run.Out, StringComparison.Ordinal);
        }
    }

    private static SortedDictionary<string, string> Bytes(CollectionCopy copy) =>
        new(
            Directory
                .EnumerateFiles(copy.Root, "*", SearchOption.AllDirectories)
                .ToDictionary(file => Path.GetRelativePath(copy.Root, file), file => Convert.ToHexString(File.ReadAllBytes(file))),
            StringComparer.Ordinal
        );
}
