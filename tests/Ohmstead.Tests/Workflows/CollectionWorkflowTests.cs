using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Workflows;

/// <summary>The workflow that a collection in a repository of its own begins with, run step by step on the demo.</summary>
public sealed class CollectionWorkflowTests
{
    private const string Program = "saltmarsh/ohmstead";

    private static readonly string[] Published = ["program: dotnet publish src/Ohmstead --configuration Release --output TEMP/ohmstead"];

    [Fact]
    public async Task A_sound_pull_request_is_green_and_publishes_nothing()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var collection = Collection(Program);
        Change(collection, "boards/SP-0008.md", text => text + "\nThe lid was cleaned.\n");
        using var host = await RunAsync(collection, HostEvent.PullRequest(collection));
        Assert.Equal(
            (JobEnd.Succeeded, null, JobEnd.Skipped),
            (host.Jobs["check"].End, host.Jobs["check"].Artifact, host.Jobs["publish"].End)
        );
        var parent = collection.Git("rev-parse", "HEAD~1").Trim();
        Assert.Equal(
            [
                .. Published,
                $"records: dotnet TEMP/ohmstead/ohmstead.dll changes {parent} HEAD --form markdown",
                $"records: dotnet TEMP/ohmstead/ohmstead.dll check . --form annotations --thorough --since {parent}",
            ],
            host.Jobs["check"].Calls
        );
    }

    [Fact]
    public async Task A_mistake_turns_the_pull_request_red_and_is_shown_on_its_line()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var collection = Collection(Program);
        Change(collection, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        using var host = await RunAsync(collection, HostEvent.PullRequest(collection));
        var check = host.Jobs["check"];
        var line =
            Array.FindIndex(collection.Read("boards/SP-0008.md").Split('\n'), text => text.Contains("PO-0B", StringComparison.Ordinal)) + 1;
        var run = check.Script("Check the records");
        Assert.Equal((JobEnd.Failed, 1), (check.End, run.Exit));
        Assert.Contains(FormattableString.Invariant($"::error file=boards/SP-0008.md,line={line},col="), run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_pull_request_says_about_the_SDK_is_not_asked()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var collection = Collection(Program);
        Put(collection, "global.json", "{ \"sdk\": { \"version\": \"99.0.100\" } }");
        using var host = await RunAsync(collection, HostEvent.PullRequest(collection));
        Assert.Equal(JobEnd.Succeeded, host.Jobs["check"].End);
    }

    [Fact]
    public async Task The_main_branch_becomes_pages_and_a_mistake_in_it_does_not_keep_them_back()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var collection = Collection(Program);
        Change(collection, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        using var host = await RunAsync(collection, HostEvent.Push(collection));
        Assert.Equal([.. Published, "records: dotnet TEMP/ohmstead/ohmstead.dll report . --to TEMP/pages"], host.Jobs["check"].Calls);
        Assert.Equal(Path.Combine(host.Jobs["check"].Temp, "pages"), host.Jobs["check"].Artifact);
        Assert.True(File.Exists(Path.Combine(host.Jobs["check"].Artifact!, "boards/SP-0008.html")));
        Assert.Equal((JobEnd.Succeeded, "https://example.org/boards/"), (host.Jobs["publish"].End, host.Jobs["publish"].Address));
    }

    [Fact]
    public async Task Records_that_are_gone_keep_the_old_pages()
    {
        using var collection = Collection(Program);
        Directory.Delete(Path.Combine(collection.Root, "boards"), recursive: true);
        collection.Commit("gone");
        using var host = await RunAsync(collection, HostEvent.Push(collection));
        Assert.Equal(
            (JobEnd.Failed, null, JobEnd.Skipped),
            (host.Jobs["check"].End, host.Jobs["check"].Artifact, host.Jobs["publish"].End)
        );
    }

    [Fact]
    public async Task A_workflow_that_was_not_told_where_the_program_is_says_so_and_fetches_nothing()
    {
        using var collection = Collection(string.Empty);
        using var host = await RunAsync(collection, HostEvent.Push(collection));
        var check = host.Jobs["check"];
        var run = Assert.Single(check.Scripts).Run;
        Assert.Equal(
            (JobEnd.Failed, 1, "::error::write the owner/name of the repository that holds the program into PROGRAM of this workflow\n"),
            (check.End, run.Exit, run.Out)
        );
        Assert.Empty(Directory.GetFileSystemEntries(check.Workspace));
    }

    // The workflow is the one in the repository, as the host would read it.
    private static async Task<WorkflowHost> RunAsync(ScratchRepository collection, HostEvent started)
    {
        using var program = ScratchRepository.Empty();
        foreach (var path in new[] { "global.json", "src/Ohmstead/Ohmstead.csproj" })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(program.Root, path))!);
            File.Copy(ProjectFolder.At(path), Path.Combine(program.Root, path));
        }

        program.Commit("program");
#pragma warning disable CA2000 // Handed to the test, which looks at what the run left and disposes of it.
        var host = new WorkflowHost(
            WorkflowFile.Parse(collection.Read(".github/workflows/collection.yml")),
            started,
            ("lighthouse/records", collection),
            (Program, program)
        );
#pragma warning restore CA2000
        try
        {
            return await host.RunAsync();
        }
        catch
        {
            host.Dispose();
            throw;
        }
    }

    private static ScratchRepository Collection(string program)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
        var repository = ScratchRepository.Empty();
        CollectionCopy.Put(repository.Root);
        var start = Run.Of([
            "start",
            "collection",
            repository.Root,
            "--name",
            "Saltmarsh Point",
            "--as-of",
            "2026-11-25",
            .. program.Length == 0 ? Array.Empty<string>() : ["--program", program],
        ]);
        Assert.Contains(".github/workflows/collection.yml: written\n", start.Out, StringComparison.Ordinal);
        repository.Commit("main");
        return repository;
    }

    private static void Change(ScratchRepository repository, string path, Func<string, string> change) =>
        Put(repository, path, change(repository.Read(path)));

    private static void Put(ScratchRepository repository, string path, string text)
    {
        File.WriteAllText(Path.Combine(repository.Root, path), text);
        repository.Commit("proposed");
    }
}
