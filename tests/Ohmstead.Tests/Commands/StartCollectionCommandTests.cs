using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A collection that begins: sound, ready to be committed, and never in the way of what is there.</summary>
public sealed class StartCollectionCommandTests
{
    private const string Name = "Fog signals: of the old light";

    [Fact]
    public void A_new_collection_passes_the_strictest_check_and_so_do_its_examples()
    {
        using var folder = CollectionCopy.Empty();
        Assert.Equal(0, Start(folder).Exit);
        Assert.EndsWith("1 boards: 1 not looked at yet; 0 errors, 0 warnings\n", Check(folder).Out, StringComparison.Ordinal);
        Assert.Equal(0, Check(folder).Exit);
        foreach (var file in new[] { "instruments.yaml", "stock.yaml", "collection.yaml" })
        {
            var text = folder.Read(file);
            var shown =
                file == "collection.yaml"
                    ? text.Replace("# keeper", "keeper", StringComparison.Ordinal)
                        .Replace("# place", "place", StringComparison.Ordinal)
                        .Replace("# duty", "duty", StringComparison.Ordinal)
                    : text.Replace("\n#  ", "\n   ", StringComparison.Ordinal);
            Assert.NotEqual(text, shown);
            folder.Write(file, shown);
        }

        Assert.Equal((0, Check(folder).Out), (Check(folder).Exit, Check(folder).Out));
        Assert.Contains("0 errors, 0 warnings", Check(folder).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_there_is_named_and_left_alone_and_the_rest_is_written()
    {
        using var folder = CollectionCopy.Empty();
        folder.Write("stock.yaml", "lots: []\n");
        folder.Write("boards/X-1.md", "---\nboard: X-1\ntitle: Clock\n---\n");
        var run = Start(folder);
        Assert.Equal((3, "stock.yaml: there already, left alone\n"), (run.Exit, run.Error));
        Assert.Equal("lots: []\n", folder.Read("stock.yaml"));
        Assert.Equal(["X-1.md"], Directory.GetFiles(folder.At("boards")).Select(Path.GetFileName));
        Assert.Contains("instruments.yaml: written\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Starting_the_same_collection_twice_changes_nothing()
    {
        using var folder = CollectionCopy.Empty();
        Start(folder);
        var again = Start(folder);
        Assert.Equal((0, string.Empty), (again.Exit, again.Error));
        Assert.Contains("collection.yaml: there already, the same\n", again.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fresh_repository_takes_every_file_and_nothing_is_left_over()
    {
        using var folder = CollectionCopy.Empty();
        Start(folder);
        var git = await Child.ShellAsync(
            "git init -q . && git add -A && git -c user.name=t -c user.email=t@example.org commit -qm start && git status --porcelain "
                + "--ignored && git ls-files",
            folder.Root
        );
        Assert.Equal(0, git.Exit);
        var files = Directory
            .EnumerateFiles(folder.Root, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder.Root, file))
            .Where(file => !file.StartsWith(".git" + Path.DirectorySeparatorChar, StringComparison.Ordinal));
        Assert.Equal(
            files.Order(StringComparer.Ordinal),
            git.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_workflow_publishes_the_branch_that_is_there()
    {
        using var folder = CollectionCopy.Empty();
        folder.Write(".git/HEAD", "ref: refs/heads/trunk\n");

        Start(folder, "--program", "saltmarsh/ohmstead", "--pages");

        Assert.Contains("branches: [trunk]", folder.Read(".github/workflows/collection.yml"), StringComparison.Ordinal);
        Assert.Contains("branches: [trunk]", folder.Read(".github/workflows/pages.yml"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_made_from_the_records_is_left_out_and_a_calendar_keeps_its_line_ends()
    {
        using var folder = CollectionCopy.Empty();

        Start(folder);

        Assert.Contains("*-sheet.html\n*.ics\n", folder.Read(".gitignore"), StringComparison.Ordinal);
        Assert.Contains("*.ics -text\n", folder.Read(".gitattributes"), StringComparison.Ordinal);
        Assert.DoesNotContain(": > ", folder.Read(".githooks/pre-commit"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_hook_checks_what_is_staged_and_not_what_lies_in_the_folder()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var folder = CollectionCopy.Empty();
        Start(folder);
        const string commit = "git -c user.name=t -c user.email=t@example.org commit -qm x";
        var environment = ("OHMSTEAD", Child.Program);
        var first = await Child.ShellAsync(
            $"git init -q . && git config core.hooksPath .githooks && git add -A && {commit}",
            folder.Root,
            environment
        );
        Assert.Equal(0, first.Exit);

        // Staged wrong, put right in the folder alone: refused all the same.
        var board = folder.Read("boards/FS-0001.md");
        folder.Write("boards/FS-0001.md", board.Replace("format: 1", "formt: 1", StringComparison.Ordinal));
        await Child.ShellAsync("git add -A", folder.Root);
        folder.Write("boards/FS-0001.md", board);
        var wrong = await Child.ShellAsync(commit, folder.Root, environment);
        Assert.Equal(1, wrong.Exit);
        Assert.Contains("'formt' is no key of the board", wrong.Out + wrong.Error, StringComparison.Ordinal);

        // And the other way round: what is staged is right, and is taken.
        await Child.ShellAsync("git add -A && echo note > more.md && git add more.md", folder.Root);
        folder.Write("boards/FS-0001.md", "nonsense");
        Assert.Equal(0, (await Child.ShellAsync(commit, folder.Root, environment)).Exit);
        var missing = await Child.ShellAsync($"git add -A && {commit}", folder.Root, ("OHMSTEAD", "no-such-program"));
        Assert.Equal(
            (1, "the records were not checked: there is no program 'no-such-program'; set OHMSTEAD, or commit with --no-verify\n"),
            (missing.Exit, missing.Error)
        );
    }

    [Fact]
    public async Task Inside_a_repository_no_hook_and_no_workflow_are_written_for_they_would_not_be_looked_for_there()
    {
        using var folder = CollectionCopy.Empty();
        await Child.ShellAsync("git init -q .", folder.Root);
        var run = Run.Of("start", "collection", folder.At("records"), "--name", Name, "--as-of", "2026-11-25");
        Assert.Equal(0, run.Exit);
        Assert.False(Directory.Exists(folder.At("records/.githooks")));
        Assert.Contains("no hook and no workflow: the folder lies in the repository", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_commit_is_small_and_names_no_schema_that_is_not_there()
    {
        using var folder = CollectionCopy.Empty();
        Start(folder);
        var files = Directory.GetFiles(folder.Root, "*", SearchOption.AllDirectories);
        // The schemas were five thousand lines.
        Assert.InRange(files.Sum(file => File.ReadAllLines(file).Length), 80, 200);
        Assert.All(files, file => Assert.DoesNotContain("$schema", File.ReadAllText(file), StringComparison.Ordinal));
        Assert.StartsWith("---\nboard: FS-0001\n", folder.Read("boards/FS-0001.md"), StringComparison.Ordinal);
        Assert.StartsWith("# The drawer and what is on order.", folder.Read("stock.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_schemas_of_a_machine_are_those_of_a_collection_and_the_settings_name_each_of_them()
    {
        using var folder = CollectionCopy.Empty();
        var run = Run.Of("start", "schemas", folder.At("a b/schemas"));
        Assert.Equal(0, run.Exit);
        var written = Directory.GetFiles(folder.At("a b/schemas"));
        Assert.Equal(6, written.Length);
        Assert.Equal(0, Start(folder, "--schemas").Exit);
        Assert.All(written, file => Assert.Equal(File.ReadAllText(file), folder.Read("schema/" + Path.GetFileName(file))));
        var settings = run.Out.Split("under yaml.schemas:\n")[1];
        using var read = JsonDocument.Parse("{" + settings + "}");
        Assert.Equal(
            written.Order(StringComparer.Ordinal),
            read.RootElement.EnumerateObject().Select(entry => new Uri(entry.Name).LocalPath).Order(StringComparer.Ordinal)
        );
        Assert.Equal(0, Run.Of("start", "schemas", folder.At("a b/schemas")).Exit);
        Assert.Equal(2, Run.Of("start", "schemas", folder.At("stock.yaml")).Exit);
    }

    [Fact]
    public void Editors_find_a_schema_for_every_file_that_is_there()
    {
        using var folder = CollectionCopy.Empty();
        Start(folder, "--schemas");
        using var settings = JsonDocument.Parse(folder.Read(".vscode/settings.json"));
        var schemas = settings.RootElement.GetProperty("yaml.schemas").EnumerateObject().Select(entry => entry.Name[2..]).ToArray();
        Assert.Equal(
            Directory.GetFiles(folder.At("schema")).Select(file => "schema/" + Path.GetFileName(file)).Order(StringComparer.Ordinal),
            schemas.Order(StringComparer.Ordinal)
        );
        foreach (var file in new[] { "collection.yaml", "instruments.yaml", "stock.yaml", "boards/FS-0001.md" })
        {
            var line = folder
                .Read(file)
                .Split('\n')
                .First(text => text.StartsWith("# yaml-language-server: $schema=", StringComparison.Ordinal));
            Assert.True(File.Exists(Path.Combine(folder.At(Path.GetDirectoryName(file)!), line.Split('=')[1])), file);
        }
    }

    [Fact]
    public void A_workflow_of_a_dozen_lines_names_where_the_program_is_and_never_a_variable_that_forks_do_not_get()
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder, "--program", "saltmarsh/ohmstead@0123456789abcdef0123456789abcdef01234567");
        Assert.Equal(0, run.Exit);
        var workflow = folder.Read(".github/workflows/collection.yml");
        Assert.Contains(
            "\n      - uses: saltmarsh/ohmstead/.github/actions/records@0123456789abcdef0123456789abcdef01234567\n",
            workflow,
            StringComparison.Ordinal
        );
        Assert.InRange(workflow.Split('\n').Count(line => line.Length > 0 && line[0] != '#'), 8, 13);
        Assert.DoesNotContain("vars.", workflow, StringComparison.Ordinal);
        Assert.DoesNotContain("may move", run.Out, StringComparison.Ordinal);
        Assert.Equal(["collection.yml"], Workflows(folder));
    }

    [Fact]
    public void A_branch_of_the_program_is_said_to_move()
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder, "--program", "saltmarsh/ohmstead", "--comments");
        Assert.Contains(
            "the workflows follow 'main' of saltmarsh/ohmstead, which may move; --program saltmarsh/ohmstead@COMMIT stays with one\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(["collection.yml", "comments.yml"], Workflows(folder));
        Assert.Contains("/.github/actions/comment@main\n", folder.Read(".github/workflows/comments.yml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_release_is_fetched_instead_of_building_the_program_and_its_sum_is_written_down()
    {
        using var folder = CollectionCopy.Empty();
        var sum = new string('a', 64);
        var run = Start(folder, "--program", "saltmarsh/ohmstead@v0.1.0", "--pages", "--release", "v0.1.0", "--sha256", sum);
        Assert.Equal(0, run.Exit);
        Assert.DoesNotContain("believe", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            $"        with: {{ release: v0.1.0, sha256: {sum} }}\n",
            folder.Read(".github/workflows/collection.yml"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"        with: {{ release: v0.1.0, sha256: {sum}, check: false }}\n",
            folder.Read(".github/workflows/pages.yml"),
            StringComparison.Ordinal
        );
        Assert.All(Workflows(folder), file =>
            Assert.DoesNotContain("from-source", folder.Read($".github/workflows/{file}"), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_release_without_a_sum_is_said_to_be_believed()
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder, "--program", "saltmarsh/ohmstead@v0.1.0", "--release", "v0.1.0");
        Assert.Contains("the workflows believe the sums that lie beside v0.1.0; --sha256 with that of ", run.Out, StringComparison.Ordinal);
        Assert.Contains("        with: { release: v0.1.0 }\n", folder.Read(".github/workflows/collection.yml"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("v1", null, "'v1' is no tag of a release; write --release v1.2.3")]
    [InlineData("v1.2.x", null, "'v1.2.x' is no tag of a release; write --release v1.2.3")]
    [InlineData("v1.2.3 }\n evil: {", null, "'v1.2.3 }<U+000A> evil: {' is no tag of a release; write --release v1.2.3")]
    [InlineData(
        "v1.2.3",
        "AB",
        "'AB' is no SHA-256; write the sixty-four digits that stand in SHA256SUMS in front of ohmstead-linux-x64.tar.gz"
    )]
    [InlineData(null, "ab", "--sha256 is of an archive of a release, and nothing says of which; write --release v1.2.3")]
    public void A_release_that_would_be_more_than_a_tag_and_a_sum_is_refused(string? tag, string? sum, string fault)
    {
        using var folder = CollectionCopy.Empty();
        string[] more = [.. tag is null ? [] : new[] { "--release", tag }, .. sum is null ? [] : new[] { "--sha256", sum }];
        var run = Start(folder, ["--program", "saltmarsh/ohmstead@v0.1.0", .. more]);
        Assert.Equal((2, fault + "\n"), (run.Exit, run.Error));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    // A workflow that cannot know where the program is would be red, or green for nothing.
    [Fact]
    public void Where_nobody_knows_where_the_program_is_no_workflow_is_written_and_it_is_written_once_that_is_known()
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder);
        Assert.False(Directory.Exists(folder.At(".github")));
        Assert.Contains("no workflow: nothing says where the host has the program from", run.Out, StringComparison.Ordinal);
        var again = Start(folder, "--program", "saltmarsh/ohmstead", "--pages");
        Assert.Equal(0, again.Exit);
        Assert.Equal(["collection.yml", "pages.yml"], Workflows(folder));
        Assert.Contains("for the pages: choose GitHub Actions as their source", again.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("x; rm", "'x; rm' names no repository; write --program OWNER/NAME@COMMIT")]
    [InlineData("../..", "'../..' names no repository; write --program OWNER/NAME@COMMIT")]
    [InlineData("a/b@", "'' is no name of a commit; write --program a/b@COMMIT")]
    [InlineData("a/b@x y", "'x y' is no name of a commit; write --program a/b@COMMIT")]
    [InlineData("a/b@-x", "'-x' is no name of a commit; write --program a/b@COMMIT")]
    [InlineData("a/b@x\n  evil: 1", "'x<U+000A>  evil: 1' is no name of a commit; write --program a/b@COMMIT")]
    public void A_place_of_the_program_that_would_be_more_than_a_name_is_refused(string program, string fault)
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder, "--program", program);
        Assert.Equal((2, fault + "\n"), (run.Exit, run.Error));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    [Theory]
    [InlineData("--pages")]
    [InlineData("--comments")]
    [InlineData("--release=v1.2.3")]
    public void What_a_workflow_is_to_do_needs_the_place_of_the_program(string wanted)
    {
        using var folder = CollectionCopy.Empty();
        var run = Start(folder, wanted);
        Assert.Equal((2, "nothing says where workflows have the program from; write --program OWNER/NAME@COMMIT\n"), (run.Exit, run.Error));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    [Theory]
    [InlineData("", "the name of a collection is empty; write --name \"Saltmarsh Point weather collection\"")]
    [InlineData("two\nlines", "the name of a collection has a control character; write it on one line")]
    public void A_name_that_is_none_is_refused(string name, string fault)
    {
        using var folder = CollectionCopy.Empty();
        var run = Run.Of("start", "collection", folder.Root, "--name", name);
        Assert.Equal((2, fault + "\n"), (run.Exit, run.Error));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    private static string?[] Workflows(CollectionCopy folder) =>
        [.. Directory.GetFiles(folder.At(".github/workflows")).Select(Path.GetFileName).Order(StringComparer.Ordinal)];

    private static Run Start(CollectionCopy folder, params string[] more) =>
        Run.Of(["start", "collection", folder.Root, "--name", Name, "--as-of", "2026-11-25", .. more]);

    private static Run Check(CollectionCopy folder) => Run.Of("check", folder.Root, "--strict", "--thorough", "--as-of", "2026-11-25");
}
