using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The project's own workflow for the collection in records/, run step by step on the demo.</summary>
public sealed class ProjectWorkflowTests
{
    private const string Published = "dotnet publish src/Ohmstead --configuration Release --output TEMP/ohmstead";

    [Fact]
    public async Task A_sound_pull_request_is_green_and_publishes_nothing()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var repository = Project();
        Propose(repository, "boards/SP-0008.md", text => text + "\nThe lid was cleaned.\n");
        using var host = await RunAsync(repository, HostEvent.PullRequest(repository));
        var jobs = host.Jobs;
        Assert.Equal(
            ("check", JobEnd.Succeeded),
            Assert.Single(jobs.Select(job => (job.Key, job.Value.End)), job => job.End != JobEnd.Skipped)
        );
        Assert.DoesNotContain("::error", jobs["check"].Script("The records").Out, StringComparison.Ordinal);
        var parent = repository.Git("rev-parse", "HEAD~1").Trim();
        Assert.Equal(
            [
                "base: " + Published,
                $"proposed: dotnet TEMP/ohmstead/ohmstead.dll changes {parent} HEAD --in records --form markdown",
                $"proposed: dotnet TEMP/ohmstead/ohmstead.dll check records --form annotations --thorough --since {parent} --also "
                    + "sarif=TEMP/findings.sarif",
            ],
            jobs["check"].Calls
        );
    }

    [Fact]
    public async Task A_mistake_turns_the_pull_request_red_and_is_shown_on_its_line()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var repository = Project();
        Propose(repository, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        using var host = await RunAsync(repository, HostEvent.PullRequest(repository));
        var check = host.Jobs["check"];
        var line =
            Array.FindIndex(repository.Read("records/boards/SP-0008.md").Split('\n'), text =>
                text.Contains("PO-0B", StringComparison.Ordinal)
            ) + 1;
        var run = check.Script("The records");
        Assert.Equal((JobEnd.Failed, 1), (check.End, run.Exit));
        Assert.Contains(
            FormattableString.Invariant($"::error file=records/boards/SP-0008.md,line={line},col="),
            run.Out,
            StringComparison.Ordinal
        );
    }

    // A contributor's tree can hold files that a build or the program's start would read: none of them must be there.
    [Fact]
    public async Task Of_a_pull_request_nothing_but_records_is_fetched_and_the_program_is_that_of_the_main_branch()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var repository = Project();
        foreach (var planted in new[] { "Directory.Build.props", "nuget.config", ".config/dotnet-tools.json", "src/Ohmstead/Planted.cs" })
        {
            Write(repository, planted, "planted");
        }

        Write(repository, "global.json", "{ \"sdk\": { \"version\": \"99.0.100\" } }");
        repository.Commit("planted");
        using var host = await RunAsync(repository, HostEvent.PullRequest(repository));
        var check = host.Jobs["check"];
        Assert.Equal(JobEnd.Succeeded, check.End);
        Assert.Equal(
            ["records"],
            Directory.GetFileSystemEntries(Path.Combine(check.Workspace, "proposed")).Select(Path.GetFileName).Where(name => name != ".git")
        );
        Assert.DoesNotContain(Directory.EnumerateFiles(Path.Combine(check.Workspace, "base"), "*", SearchOption.AllDirectories), file =>
            Path.GetFileName(file) == "Planted.cs"
        );
        Assert.StartsWith("base: dotnet publish ", check.Calls[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_main_branch_is_built_and_its_pages_are_published()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var repository = Project();
        using var host = await RunAsync(repository, HostEvent.Push(repository));
        var jobs = host.Jobs;
        var pages = jobs["pages"];
        Assert.Equal((JobEnd.Skipped, JobEnd.Succeeded, JobEnd.Succeeded), (jobs["check"].End, pages.End, jobs["publish"].End));
        Assert.Equal([".: " + Published, ".: dotnet TEMP/ohmstead/ohmstead.dll report records --to TEMP/pages"], pages.Calls);
        Assert.Equal(Path.Combine(pages.Temp, "pages"), pages.Artifact);
        Assert.True(File.Exists(Path.Combine(pages.Artifact!, "boards/SP-0008.html")));
        Assert.Equal("https://example.org/boards/", jobs["publish"].Address);
    }

    [Fact]
    public async Task A_collection_with_a_mistake_is_published_too_and_its_pages_show_it()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var repository = Project();
        Propose(repository, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        using var host = await RunAsync(repository, HostEvent.Push(repository));
        var jobs = host.Jobs;
        Assert.Equal(JobEnd.Succeeded, jobs["publish"].End);
        Assert.Contains(
            "PO-0B",
            await File.ReadAllTextAsync(Path.Combine(jobs["pages"].Artifact!, "findings.html"), TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Without_a_collection_nothing_is_published()
    {
        using var repository = Project();
        Directory.Delete(Path.Combine(repository.Root, "records"), recursive: true);
        repository.Commit("gone");
        using var host = await RunAsync(repository, HostEvent.Push(repository));
        var jobs = host.Jobs;
        Assert.Equal((JobEnd.Failed, null, JobEnd.Skipped), (jobs["pages"].End, jobs["pages"].Artifact, jobs["publish"].End));
        Assert.Contains("there is no folder 'records'", jobs["pages"].Script("Build the report").Error, StringComparison.Ordinal);
    }

    private static Task<WorkflowHost> RunAsync(ScratchRepository repository, HostEvent started) =>
        new WorkflowHost(WorkflowRulesTests.Read("collection.yml"), started, ("saltmarsh/ohmstead", repository)).RunAsync();

    // What the workflow names of the project: its SDK, the project that is built, and the demo.
    private static ScratchRepository Project()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
        var repository = ScratchRepository.Empty();
        ProgramRepository.Put(repository);

        CollectionCopy.Put(Path.Combine(repository.Root, "records"));
        repository.Commit("main");
        return repository;
    }

    private static void Propose(ScratchRepository repository, string record, Func<string, string> change)
    {
        Write(repository, "records/" + record, change(repository.Read("records/" + record)));
        repository.Commit("proposed");
    }

    private static void Write(ScratchRepository repository, string path, string text)
    {
        var full = Path.Combine(repository.Root, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }
}
