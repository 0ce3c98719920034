using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Documents;

/// <summary>What the documents tell is so: their commands work, what they show is what is printed, and their links lead
/// somewhere.</summary>
/// <remarks>
/// The commands of one chapter are typed in their order in one copy of the demo. A remark in front of a block says what else is done:
/// <c>file: NAME</c> writes the block to a file, <c>replace OLD by NEW in FILE</c> changes one before its commands are typed.
/// A line of dots in what is shown stands for lines that are left out, and what stands behind <c>&gt; </c> in a session was typed.
/// </remarks>
[Collection(InAFolder.Name)]
public sealed class DocumentTests
{
    private const string LeftOut = "…";

    // What starts something else than our program. The shell, Git and the SDK are not ours to try, and the builds are those of the
    // workflows.
    private static readonly string[] Others =
    [
        "dotnet ",
        "git ",
        "tests/",
        "OHMSTEAD_",
        "~/ohmstead/",
        ".ci/",
        "find ",
        "chromium ",
        "cd ",
    ];

    [Theory]
    [InlineData("README.md", 9)]
    [InlineData("DEVELOPERS.md", 15)]
    public void A_document_that_everybody_reads_stays_short(string path, int kilobytes) =>
        Assert.InRange(new FileInfo(ProjectFolder.At(path)).Length, 1, kilobytes * 1024);

    [Fact]
    public void Every_link_of_every_document_leads_to_something()
    {
        var dead = new List<string>();
        var seen = 0;
        foreach (var page in MarkdownPage.All)
        {
            var folder = Path.GetDirectoryName(ProjectFolder.At(page.Path))!;
            foreach (var link in page.Links().Where(link => !link.Contains("://", StringComparison.Ordinal)))
            {
                seen++;
                var parts = link.Split('#');
                var target = parts[0].Length == 0 ? ProjectFolder.At(page.Path) : Path.GetFullPath(Path.Combine(folder, parts[0]));
                var isThere =
                    Path.Exists(target)
                    && (
                        parts.Length == 1
                        || new MarkdownPage(Path.GetRelativePath(ProjectFolder.Root, target))
                            .Anchors()
                            .Contains(parts[1], StringComparer.Ordinal)
                    );
                if (!isThere)
                {
                    dead.Add($"{page.Path}: {link}");
                }
            }
        }

        Assert.True(dead.Count == 0, string.Join('\n', dead));
        Assert.InRange(seen, 20, 1000);
    }

    [Fact]
    public void Each_project_has_a_page_of_one_screen_that_says_where_to_start()
    {
        foreach (
            var project in Directory.GetDirectories(ProjectFolder.At("src")).Where(one => Directory.GetFiles(one, "*.csproj").Length > 0)
        )
        {
            var page = Path.Combine(project, "README.md");
            Assert.True(File.Exists(page), $"there is no {page}");
            var text = File.ReadAllText(page);
            Assert.Contains("**Holds**", text, StringComparison.Ordinal);
            Assert.Contains("**Knows nothing of**", text, StringComparison.Ordinal);
            Assert.Contains("**Start reading**", text, StringComparison.Ordinal);
            foreach (var room in Directory.GetDirectories(project).Select(Path.GetFileName).Where(room => room is not ("bin" or "obj")))
            {
                Assert.True(text.Contains($"`{room}`", StringComparison.Ordinal), $"{page} does not name its room {room}");
            }
        }
    }

    [Fact]
    public void Every_command_of_every_document_does_what_the_document_shows()
    {
        var wrong = new List<string>();
        var seen = 0;
        // The reference holds the examples of the help, which have their own test.
        foreach (var page in MarkdownPage.All.Where(page => !page.Path.EndsWith("/COMMANDS.md", StringComparison.Ordinal)))
        {
            foreach (var chapter in page.Blocks().GroupBy(block => block.Heading))
            {
                using var folder = new ScratchFolder();
                foreach (var block in chapter)
                {
                    Prepare(folder, block);
                    seen += block.Kind switch
                    {
                        "sh" => Commands(folder, page, block, wrong),
                        "text" => Shown(folder, page, block, wrong),
                        _ => 0,
                    };
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n\n", wrong));
        Assert.InRange(seen, 40, 1000);
    }

    private static void Prepare(ScratchFolder folder, MarkdownPage.Block block)
    {
        if (block.Remark.StartsWith("file: ", StringComparison.Ordinal))
        {
            folder.Write(block.Remark["file: ".Length..], string.Join('\n', block.Lines) + "\n");
        }
        else if (block.Remark.Split([" by ", " in "], StringSplitOptions.None) is [var old, var @new, var file])
        {
            folder.Replace(file, old["replace ".Length..], @new);
        }
    }

    private static int Commands(ScratchFolder folder, MarkdownPage page, MarkdownPage.Block block, List<string> wrong)
    {
        var seen = 0;
        foreach (var (at, line) in block.Lines.Index().Where(one => one.Item.Length > 0 && one.Item[0] != '#'))
        {
            var place = $"{page.Path}:{block.Line + at}: {line}";
            if (TypedLine.Of(line) is not { } typed)
            {
                if (!Others.Any(other => line.StartsWith(other, StringComparison.Ordinal)))
                {
                    wrong.Add($"{place}\nis no command that the tests know");
                }

                continue;
            }

            seen++;
            // What serves or watches has no end of its own: its words are understood.
            var run = folder.Type(typed.Words[0] == "preview" ? [.. typed.Words, "--help"] : typed.Words);
            if (run.Exit != typed.Exit)
            {
                wrong.Add($"{place}\nends with {run.Exit}:\n{run.Out}");
            }
        }

        return seen;
    }

    private static int Shown(ScratchFolder folder, MarkdownPage page, MarkdownPage.Block block, List<string> wrong)
    {
        var starts = block
            .Lines.Index()
            .Where(line => line.Item.StartsWith("$ ", StringComparison.Ordinal))
            .Select(line => line.Index)
            .ToList();
        foreach (var (order, start) in starts.Index())
        {
            var place = $"{page.Path}:{block.Line + start}";
            if (TypedLine.Of(block.Lines[start][2..]) is not { } typed)
            {
                wrong.Add($"{place}: {block.Lines[start]}\nis no command of the program");
                continue;
            }

            var shown = block
                .Lines.Skip(start + 1)
                .Take((order + 1 < starts.Count ? starts[order + 1] : block.Lines.Count) - start - 1)
                .ToList();
            var input = string.Join('\n', shown.Where(IsTyped).Select(line => line[(line.IndexOf("> ", StringComparison.Ordinal) + 2)..]));
            var text = string.Concat(
                shown.Select(line => IsTyped(line) ? line[..(line.IndexOf("> ", StringComparison.Ordinal) + 2)] : line + "\n")
            );
            var printed = folder.Type(typed.Words, input).Out;
            if (!Holds(printed, text.TrimEnd('\n')))
            {
                wrong.Add($"{place}: {block.Lines[start]}\nprints:\n{printed}");
            }
        }

        return starts.Count;
    }

    private static bool IsTyped(string line) => line.Contains("] > ", StringComparison.Ordinal);

    // All that is shown is printed, in this order and with nothing between, but where lines are left out.
    private static bool Holds(string printed, string shown)
    {
        var at = 0;
        foreach (var (order, piece) in ('\n' + shown + '\n').Split($"\n{LeftOut}\n").Select(one => one.Trim('\n')).Index())
        {
            var found = printed.IndexOf(piece.TrimEnd('\n'), at, StringComparison.Ordinal);
            if (found < 0 || (order == 0 && found != 0))
            {
                return false;
            }

            at = found + piece.TrimEnd('\n').Length;
        }

        return shown.Contains(LeftOut, StringComparison.Ordinal) || printed[at..].Trim('\n').Length == 0;
    }
}
