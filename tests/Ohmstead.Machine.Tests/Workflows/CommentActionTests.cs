using System.Text;
using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The comment under a pull request, made of what a stranger's run kept: whatever that is, it lands under the pull request of its
/// own commit, as text.</summary>
/// <remarks>
/// The host is a folder of answers: gh is stood in for by a script that gives them by address, and writes down what is posted. What it
/// answers follows the host's documentation of each address.
/// </remarks>
public sealed class CommentActionTests
{
    private const string Repository = "lighthouse/records";
    private const string Commit = "89abcdef89abcdef89abcdef89abcdef89abcdef";
    private const string Opening =
        "<!-- ohmstead changes -->\nWhat this proposal changes, as [its own run](https://example.org/lighthouse/records/actions/runs/41) "
        + "told it:\n\n";

    // Arguments are kept one a line, so that a test sees that none was taken apart.
    private const string Gh = """
        #!/bin/sh
        printf '%s\n' "$@" --- >> "$ANSWERS/asked"
        [ "$GH_TOKEN" = token ] || exit 4
        method=$3
        for word; do case "$word" in repos/*) address=$word ;; esac; done
        case "$method $address" in
          "GET repos/lighthouse/records/pulls") cat "$ANSWERS/pulls" ;;
          "GET repos/lighthouse/records/actions/runs/41/artifacts") cat "$ANSWERS/artifacts" ;;
          "GET repos/lighthouse/records/issues/7/comments") cat "$ANSWERS/comments" ;;
          "POST "* | "PATCH "*) echo "$method $address" >> "$ANSWERS/posted"; for word; do body=$word; done; cp "$body" "$ANSWERS/body" ;;
          *) case "$2" in repos/lighthouse/records/actions/artifacts/5/zip) cat "$ANSWERS/zip" ;; *) exit 1 ;; esac ;;
        esac

        """;

    [Fact]
    public async Task What_a_run_told_stands_under_its_pull_request_and_reads_as_Markdown()
    {
        using var answers = new Answers();
        var told = Real();
        answers.Keep("changes.md", told);
        var run = await answers.RunAsync();
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal(["POST repos/lighthouse/records/issues/7/comments"], answers.Posted);

        // What the program writes is let through, the table too; the lines stand in code.
        var table = told[..told.IndexOf("<details>", StringComparison.Ordinal)];
        Assert.Contains("| ` SP-0007 ` | fit to run | a fault stands | design |\n", table, StringComparison.Ordinal);
        Assert.StartsWith(Opening + table, answers.Body, StringComparison.Ordinal);
        Assert.Contains(
            "\n\n<details><summary>what differs, line by line</summary>\n\n```text\nSP-0007  was fit to run",
            answers.Body,
            StringComparison.Ordinal
        );
        Assert.EndsWith("\n```\n\n</details>\n", answers.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_run_writes_over_the_comment_of_the_one_before_and_over_no_other()
    {
        using var answers = new Answers();
        answers.Keep("changes.md", "**nothing differs in meaning; 20 boards are as they were**\n\n");
        answers.Say(
            "comments",
            """
            [{"id":1,"user":{"login":"mallory"},"body":"<!-- ohmstead changes -->\nmine"},
             {"id":2,"user":{"login":"github-actions[bot]"},"body":"else"}]
            [{"id":3,"user":{"login":"github-actions[bot]"},"body":"<!-- ohmstead changes -->\nold"}]
            """
        );
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.Equal(["PATCH repos/lighthouse/records/issues/comments/3"], answers.Posted);
        Assert.Equal(Opening + "**nothing differs in meaning; 20 boards are as they were**\n\n", answers.Body);
    }

    public static TheoryData<string, string> Hostile { get; } =
        new()
        {
            { "a name that is called", "**1 state differs**\n\n@everyone see #12\n" },
            {
                "a second cell in code",
                "**1 state differs**\n\n| board | was | now | because of |\n|---|---|---|---|\n| ` a | @everyone ` | x | y | z |\n"
            },
            { "an escaped escape", "**1 state differs**\n\n| ` a \\\\| @everyone ` | x | y | z |\n" },
            { "a state that is a link", "**1 state differs**\n\n| ` a ` | [x](https://example.org) | y | z |\n" },
            { "a number that is linked", "**1 state differs**\n\n| ` a ` | GH-12 | y | z |\n" },
            { "a commit that is linked", "**89abcdef89 differs**\n" },
            { "markup", "<img src=https://example.org/x.png>\n" },
            { "a picture", "![x](https://example.org/x.png)\n" },
            { "the end of a block", "```\n@everyone\n````\n@everyone\n" },
            {
                "the end of a block in the lines",
                "**1 state differs**\n\n<details><summary>what differs, line by line</summary>\n\n```text\n````\n@everyone\n`````\n"
                    + "</details>\n@everyone\n"
            },
            { "a remark that hides", "**1 state differs**\n\n<!--\n" },
            { "controls and turned text", "\u001b[31m\u202e@everyone\u2066\u200b\u0000\r\n" },
        };

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task Whatever_was_kept_it_is_shown_as_text(string what, string text)
    {
        using var answers = new Answers();
        answers.Keep("changes.md", text);
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.StartsWith(Opening, answers.Body, StringComparison.Ordinal);
        var shown = answers.Body[Opening.Length..];
        Assert.DoesNotContain(shown, letter => char.IsControl(letter) && letter != '\n');
        Assert.DoesNotContain(shown, letter => letter is '\u202e' or '\u2066' or '\u200b');

        // Outside of the blocks of code, told apart by the rules of Markdown (CommonMark 0.31, fenced code blocks), nothing is left but our
        // own words.
        var outside = Outside(shown);
        Assert.True(
            outside.All(line =>
                line is "" or "**1 state differs**" or "<details><summary>what differs, line by line</summary>" or "</details>"
            ),
            $"{what}: {string.Join('\n', outside)}"
        );
    }

    [Fact]
    public async Task A_text_that_is_too_long_is_cut_below_what_the_host_takes_and_that_is_told()
    {
        using var answers = new Answers();
        answers.Keep("changes.md", string.Concat(Enumerable.Repeat("Ω line\n", 200_000)));
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.InRange(Encoding.UTF8.GetByteCount(answers.Body), 50_000, 65_535);
        Assert.Matches("\n```\n\nLines that are left out: [0-9]+\\. The run tells all\\.\n$", answers.Body);
    }

    [Fact]
    public async Task A_fence_that_would_fill_the_comment_does_not()
    {
        using var answers = new Answers();
        answers.Keep("changes.md", new string('`', 50_000) + "\n@everyone\n");
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.InRange(answers.Body.Length, 50_000, 65_535);
        Assert.All(Outside(answers.Body[Opening.Length..]), line => Assert.Equal(string.Empty, line));
    }

    // The archive is a stranger's too: what else is in it is not unpacked, and no number in it is asked.
    [Fact]
    public async Task Nothing_of_the_archive_but_the_one_text_is_read_and_nothing_is_written()
    {
        using var answers = new Answers();
        answers.KeepAll(
            ("changes.md", "**1 state differs**\n", false),
            ("number", "1\n", false),
            ("pull\n1", "1\n", false),
            ("../outside", "outside\n", false),
            ("/tmp/ohmstead-outside", "outside\n", false),
            ("link", "/etc/passwd", true)
        );
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.Equal(["POST repos/lighthouse/records/issues/7/comments"], answers.Posted);
        Assert.Equal(Opening + "**1 state differs**\n", answers.Body);
        Assert.Equal(answers.Before, answers.Files());
        Assert.False(File.Exists("/tmp/ohmstead-outside"));
    }

    [Fact]
    public async Task A_link_in_place_of_the_text_is_not_followed()
    {
        using var answers = new Answers();
        answers.KeepAll(("changes.md", "/etc/passwd", true));
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.Equal(Opening + "```text\n/etc/passwd\n```\n", answers.Body);
    }

    [Fact]
    public async Task A_bomb_is_cut_while_it_unpacks()
    {
        using var answers = new Answers();
        answers.Keep("changes.md", new string('x', 20_000_000));
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.InRange(answers.Body.Length, 1, 65_535);

        Assert.Equal(262_144, answers.Given);
    }

    public static TheoryData<string, string, string> Nothing { get; } =
        new()
        {
            { "pulls", "[]", "the commit of this run is not the last one of exactly one open pull request" },
            {
                "pulls",
                Answers.Pull(7, sha: new string('0', 40)),
                "the commit of this run is not the last one of exactly one open pull request"
            },
            {
                "pulls",
                Answers.Pull(7, fork: "somebody/records"),
                "the commit of this run is not the last one of exactly one open pull request"
            },
            {
                "pulls",
                Answers.Pull(7, onto: "elsewhere/records"),
                "the commit of this run is not the last one of exactly one open pull request"
            },
            {
                "pulls",
                $"{Answers.Pull(7)[..^1]}, {Answers.Pull(8)[1..]}",
                "the commit of this run is not the last one of exactly one open pull request"
            },
            {
                "pulls",
                Answers.Pull(7).Replace(":7,", ":\"7/../../x\",", StringComparison.Ordinal),
                "the commit of this run is not the last one"
            },
            { "artifacts", "{\"artifacts\":[]}", "the run kept no text, or more than can be one" },
            { "artifacts", Answers.Kept(size: 2_000_000), "the run kept no text, or more than can be one" },
            { "artifacts", Answers.Kept(name: "ohmstead-changes-2"), "the run kept no text, or more than can be one" },
            { "zip", "no archive", "the run kept no text" },
        };

    [Theory]
    [MemberData(nameof(Nothing))]
    public async Task Where_it_is_not_certain_nothing_is_said(string file, string answer, string told)
    {
        using var answers = new Answers();
        answers.Keep("changes.md", "**1 state differs**\n");
        answers.Say(file, answer);
        var run = await answers.RunAsync();
        Assert.Equal(0, run.Exit);
        Assert.StartsWith("::notice::no comment: " + told, run.Out, StringComparison.Ordinal);
        Assert.Empty(answers.Posted);
    }

    [Fact]
    public async Task What_a_branch_is_called_stays_one_word()
    {
        using var answers = new Answers();
        answers.Keep("changes.md", "**1 state differs**\n");
        answers.Branch = "x&state=closed$(touch posted)@/etc/passwd";
        Assert.Equal(0, (await answers.RunAsync()).Exit);
        Assert.Contains("-f\nhead=mallory:x&state=closed$(touch posted)@/etc/passwd\n", answers.Asked, StringComparison.Ordinal);
        Assert.Equal(["POST repos/lighthouse/records/issues/7/comments"], answers.Posted);
    }

    [Fact]
    public async Task A_run_that_no_pull_request_started_says_nothing()
    {
        using var answers = new Answers { Event = "push" };
        answers.Keep("changes.md", "**1 state differs**\n");
        Assert.Null(await answers.TryAsync());
        Assert.Empty(answers.Posted);
    }

    private static string Real()
    {
        using var now = CollectionCopy.Make();
        var design = now.Read("designs/teleprinter-line.md");
        now.Write("designs/teleprinter-line.md", design.Replace("±20 %", "±2 %", StringComparison.Ordinal));
        return Run.Of("changes", CollectionCopy.Untouched, now.Root, "--form", "markdown", "--as-of", "2026-11-25").Out;
    }

    // What stands in no fenced block: a fence of three or more ends with one that is as long or longer, alone on its line.
    private static List<string> Outside(string text)
    {
        var (outside, fence) = (new List<string>(), 0);
        foreach (var line in text.Split('\n'))
        {
            var ticks = line.TakeWhile(letter => letter == '`').Count();
            if (fence > 0)
            {
                fence = ticks >= fence && line.Trim().Length == ticks ? 0 : fence;
            }
            else if (ticks >= 3 && !line[ticks..].Contains('`', StringComparison.Ordinal))
            {
                fence = ticks;
            }
            else
            {
                outside.Add(line);
            }
        }

        Assert.Equal(0, fence);
        return outside;
    }

    // How much text there is when a comment is made of it is written down.
    private const string Jq = """
        #!/bin/sh
        [ "$2" = --rawfile ] && wc -c < "$4" > "$ANSWERS/given"
        PATH=$REAL_PATH exec jq "$@"

        """;

    // The folder of answers of one run.
    private sealed class Answers : IDisposable
    {
        private readonly CollectionCopy folder = CollectionCopy.Empty();

        public Answers()
        {
            Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
            Assert.SkipWhen(
                new[] { "jq", "unzip", "zip" }.Any(tool => !File.Exists("/usr/bin/" + tool)),
                "needs jq, unzip and zip, as the machines of the host have them"
            );
            Say("pulls", Pull(7));
            Say("artifacts", Kept());
            Say("comments", "[]");
        }

        public string Event { get; init; } = "pull_request";

        public string Branch { get; set; } = "mend-c3";

        public string[] Posted => File.Exists(folder.At("posted")) ? File.ReadAllLines(folder.At("posted")) : [];

        public string Asked => folder.Read("asked");

        /// <summary>How many bytes of text a comment was made of.</summary>
        public int Given => int.Parse(folder.Read("given"), System.Globalization.CultureInfo.InvariantCulture);

        public string Body => JsonDocument.Parse(folder.Read("body")).RootElement.GetProperty("body").GetString()!;

        /// <summary>The files in front of the run.</summary>
        public string[] Before { get; private set; } = [];

        public static string Pull(int number, string sha = Commit, string fork = "mallory/records", string onto = Repository) =>
            $$"""[{"number":{{number}},"head":{"sha":"{{sha}}","repo":{"full_name":"{{fork}}"} },"""
            + $$"""
                "base":{"repo":{"full_name":"{{onto}}"} } }]
                """;

        public static string Kept(string name = "ohmstead-changes", int size = 900) =>
            $$"""{"artifacts":[{"id":5,"name":"{{name}}","size_in_bytes":{{size}},"expired":false}]}""";

        public void Say(string file, string answer) => folder.Write(file, answer);

        public void Keep(string name, string text) => KeepAll((name, text, false));

        // Names and links as no tool would pack them.
        public void KeepAll(params (string Name, string Text, bool IsLink)[] files)
        {
            using var archive = new System.IO.Compression.ZipArchive(
                File.Create(folder.At("zip")),
                System.IO.Compression.ZipArchiveMode.Create
            );
            foreach (var (name, text, isLink) in files)
            {
                var entry = archive.CreateEntry(name);
                entry.ExternalAttributes = (isLink ? 0xA1FF : 0x81A4) << 16;
                using var target = entry.Open();
                target.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        public string[] Files() =>
            [
                .. Directory
                    .EnumerateFileSystemEntries(folder.Root, "*", SearchOption.AllDirectories)
                    .Select(path => Path.GetRelativePath(folder.Root, path))
                    .Where(path => path is not ("asked" or "posted" or "body" or "given"))
                    .Order(StringComparer.Ordinal),
            ];

        public async Task<Run> RunAsync() => Assert.Single((await TryAsync())!.Scripts).Run;

        public async Task<JobRun?> TryAsync()
        {
            Before = Files();
            using var program = ProgramRepository.Make();
            using var collection = ScratchRepository.Empty();
            collection.Write("collection.yaml", "name: x\n");
            collection.Commit("main");
            var text = WorkflowRulesTests.Text("started/comments.yml");
            var revision = text[(text.IndexOf('@', StringComparison.Ordinal) + 1)..].Trim();
            var workflow = WorkflowFile.Parse(text.Replace(revision, "HEAD", StringComparison.Ordinal));
            var told = new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["event"] = Event,
                ["id"] = "41",
                ["head_sha"] = Commit,
                ["head_branch"] = Branch,
                ["head_repository.owner.login"] = "mallory",
                ["head_repository.full_name"] = "mallory/records",
            };
            using var host = new WorkflowHost(
                workflow,
                HostEvent.Push(collection) with
                {
                    Name = "workflow_run",
                    Told = told.ToDictionary(pair => "github.event.workflow_run." + pair.Key, pair => pair.Value, StringComparer.Ordinal),
                },
                (Repository, collection),
                (ProgramRepository.Name, program)
            );
            await host.With("gh", Gh).With("jq", Jq).Set("ANSWERS", folder.Root).RunAsync();
            var job = host.Jobs["comment"];
            Assert.Empty(Directory.EnumerateFileSystemEntries(job.Workspace));
            return job.End == JobEnd.Skipped ? null : job;
        }

        public void Dispose() => folder.Dispose();
    }
}
