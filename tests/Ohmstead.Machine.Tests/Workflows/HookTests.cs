using System.Text.RegularExpressions;
using Ohmstead.Starting;
using Ohmstead.Tests.Support;
using YamlDotNet.RepresentationModel;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The hook in front of a commit, as Git calls it and as a manager of hooks does: one file, so they say the same.</summary>
public sealed class HookTests
{
    // In place of the program: says what it was called with and which boards it sees, and ends as FINDS says.
    private const string Program = """
        #!/bin/sh
        echo "$1 ${2##*/}"
        cat "$2"/boards/* 2> /dev/null || true
        exit ${FINDS:-0}

        """;

    [Fact]
    public void A_manager_is_given_the_file_that_a_collection_begins_with()
    {
        var plain = Assert.Single(CollectionFiles.OfRepository(null));
        var entry = Entry();
        Assert.Equal(plain.Text, File.ReadAllText(entry[0]));
        Assert.Equal(["--all"], entry[1..]);
        Assert.True(plain.IsProgram);
        Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(entry[0]).HasFlag(UnixFileMode.UserExecute));

        // A script of the repository that holds it, called once and without the names of files.
        Assert.Equal(("script", "false"), (Hook().Text("language"), Hook().Text("pass_filenames")));
    }

    public static TheoryData<string, bool> Paths { get; } =
        new()
        {
            { "boards/SP-0001.md", true },
            { "stock.yaml", true },
            { "meters.yaml", true },
            { "photos/SP-0001/cell.png", true },
            { "lists/parts.csv", false },
            { "note.txt", false },
            { "photos.txt", false },
            { "boards/x.md.orig", false },
        };

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Both_look_when_a_record_or_a_photograph_is_staged(string path, bool looks)
    {
        using var hooked = new Hooked();
        hooked.Stage(path, "x\n");
        Assert.Equal(looks, Regex.IsMatch(path, Hook().Text("files")!, RegexOptions.None));
        Assert.Equal(looks, (await hooked.PlainAsync()).Out.Length > 0);
    }

    [Fact]
    public async Task Both_check_what_is_staged_and_not_what_lies_in_the_folder()
    {
        using var hooked = new Hooked();
        hooked.Stage("boards/SP-0001.md", "staged\n");
        hooked.Repository.Write("boards/SP-0001.md", "lying there\n");
        var plain = await hooked.PlainAsync();
        var managed = await hooked.ManagedAsync();
        Assert.EndsWith("\nstaged\n", plain.Out, StringComparison.Ordinal);
        Assert.EndsWith("\nstaged\n", managed.Out, StringComparison.Ordinal);
        Assert.StartsWith("check ", plain.Out, StringComparison.Ordinal);
        Assert.StartsWith("check ", managed.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Both_end_as_the_program_ends_and_say_when_there_is_none()
    {
        using var hooked = new Hooked();
        hooked.Stage("boards/SP-0001.md", "x\n");
        Assert.Equal((1, 1), ((await hooked.PlainAsync(("FINDS", "1"))).Exit, (await hooked.ManagedAsync([], ("FINDS", "1"))).Exit));
        var missing = ("OHMSTEAD", "no-such-program");
        foreach (var run in new[] { await hooked.PlainAsync(missing), await hooked.ManagedAsync([], missing) })
        {
            Assert.Equal(
                (1, "the records were not checked: there is no program 'no-such-program'; set OHMSTEAD, or commit with --no-verify\n"),
                (run.Exit, run.Error)
            );
        }
    }

    // A manager that is told to run over all files, as in a workflow, finds nothing staged: that is no reason to pass.
    [Fact]
    public async Task A_manager_checks_all_where_nothing_is_staged()
    {
        using var hooked = new Hooked();
        hooked.Stage("boards/SP-0001.md", "committed\n");
        hooked.Repository.Commit("all");
        Assert.Equal(string.Empty, (await hooked.PlainAsync()).Out);
        Assert.EndsWith("\ncommitted\n", (await hooked.ManagedAsync()).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_manager_names_the_folder_of_the_collection_where_it_is_not_the_repository()
    {
        using var hooked = new Hooked();
        hooked.Stage("the records/boards/SP-0001.md", "within\n");
        Assert.Equal("check the records\nwithin\n", (await hooked.ManagedAsync(["the records"])).Out);
    }

    [Fact]
    public async Task Called_by_a_manager_the_program_finds_what_it_finds()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var hooked = new Hooked();
        hooked.Stage("records/boards/SP-0900.md", "---\nboard: SP-0900\ntitle: x\nwrong: y\n---\n");
        var run = await hooked.ManagedAsync(["records"], ("OHMSTEAD", Child.Program));
        Assert.Equal(1, run.Exit);
        Assert.Contains("boards/SP-0900.md:4:1: error: 'wrong' is no key of the board", run.Out, StringComparison.Ordinal);
    }

    private static YamlMappingNode Hook(string id = "ohmstead-check")
    {
        var yaml = new YamlStream();
        using var reader = new StringReader(File.ReadAllText(ProjectFolder.At(".pre-commit-hooks.yaml")));
        yaml.Load(reader);
        var hooks = ((YamlSequenceNode)Assert.Single(yaml.Documents).RootNode).Cast<YamlMappingNode>();
        return Assert.Single(hooks, hook => hook.Text("id") == id);
    }

    // The words that are run: the first of a script is a path in the repository of the hook.
    private static string[] Entry()
    {
        var words = Hook().Text("entry")!.Split(' ');
        return [ProjectFolder.At(words[0]), .. words[1..]];
    }

    // A repository with the plain hook in it.
    private sealed class Hooked : IDisposable
    {
        private readonly CollectionCopy tools = CollectionCopy.Empty();

        public Hooked()
        {
            Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the hook with a shell");
            Repository = ScratchRepository.Empty();
            tools.Write("program", Program);
            tools.Write("pre-commit", Assert.Single(CollectionFiles.OfRepository(null)).Text);
        }

        public ScratchRepository Repository { get; }

        public void Stage(string path, string text)
        {
            var full = Path.Combine(Repository.Root, path);
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            File.WriteAllText(full, text);
            Repository.Git("add", "--all");
        }

        public Task<Run> PlainAsync(params (string Name, string Value)[] environment) => RunAsync([tools.At("pre-commit")], environment);

        public Task<Run> ManagedAsync(params (string Name, string Value)[] environment) => ManagedAsync([], environment);

        // As the manager documents it: at the root of the repository, with its own words and then those of the keeper.
        public Task<Run> ManagedAsync(string[] more, params (string Name, string Value)[] environment) =>
            RunAsync([.. Entry(), .. more], environment);

        public void Dispose()
        {
            tools.Dispose();
            Repository.Dispose();
        }

        private Task<Run> RunAsync(string[] words, (string Name, string Value)[] environment) =>
            Child.ShellAsync(
                "sh " + string.Join(' ', words.Select(word => $"'{word}'")),
                Repository.Root,
                [("OHMSTEAD", $"sh {tools.At("program")}"), .. environment]
            );
    }
}
