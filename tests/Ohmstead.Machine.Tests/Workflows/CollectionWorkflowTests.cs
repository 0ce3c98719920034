using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The workflows that a collection in a repository of its own begins with, run step by step on the demo.</summary>
public sealed class CollectionWorkflowTests
{
    private const string Built =
        $"TEMP/actions/{ProgramRepository.Name}/COMMIT: dotnet publish src/Ohmstead --configuration Release --output TEMP/ohmstead";

    [Fact]
    public async Task The_first_run_of_a_collection_that_was_just_started_is_green()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
        using var program = ProgramRepository.Make();
        using var collection = ScratchRepository.Empty();
        Start(collection, program, "Fog signals");
        collection.Commit("start");
        using var host = await RunAsync(collection, program, "collection.yml", HostEvent.Push(collection));
        var check = host.Jobs["check"];
        Assert.Equal((JobEnd.Succeeded, 0, string.Empty), (check.End, check.Script("The records").Exit, check.Script("The records").Error));
        Assert.Empty(Sarif(check));
        Assert.Equal(string.Empty, check.Summary);
        Assert.Empty(check.Kept);
    }

    [Fact]
    public async Task A_sound_pull_request_is_green_and_told_in_the_summary()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var program = ProgramRepository.Make();
        using var collection = Demo(program);
        Change(collection, "designs/teleprinter-line.md", text => text.Replace("±20 %", "±2 %", StringComparison.Ordinal));

        // What a proposal says about the SDK is not asked.
        collection.Write("global.json", "{ \"sdk\": { \"version\": \"99.0.100\" } }");
        collection.Commit("proposed");
        using var host = await RunAsync(collection, program, "collection.yml", HostEvent.PullRequest(collection));
        var check = host.Jobs["check"];
        var parent = collection.Git("rev-parse", "HEAD~1").Trim();
        Assert.Equal(JobEnd.Succeeded, check.End);
        Assert.Equal(
            [
                $".: dotnet TEMP/ohmstead/ohmstead.dll changes {parent} HEAD --in . --form markdown",
                $".: dotnet TEMP/ohmstead/ohmstead.dll check . --form annotations --thorough --since {parent} --also "
                    + "sarif=TEMP/findings.sarif",
            ],
            check.Calls.Skip(1)
        );
        Assert.EndsWith(Built[Built.IndexOf(": ", StringComparison.Ordinal)..], check.Calls[0], StringComparison.Ordinal);
        Assert.Contains("| ` SP-0007 ` | fit to run | a fault stands | design |\n", check.Summary, StringComparison.Ordinal);
        Assert.Equal(check.Summary, await File.ReadAllTextAsync(check.Kept["ohmstead-changes"], TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_mistake_turns_the_pull_request_red_is_shown_on_its_line_and_kept_for_the_host()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var program = ProgramRepository.Make();
        using var collection = Demo(program);
        Change(collection, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));

        // An entry that was committed is rewritten: nothing in the files as they lie says so.
        Change(collection, "boards/SP-0007.md", text =>
            text.Replace("capacitance: 31.8 µF", "capacitance: 31.9 µF", StringComparison.Ordinal)
        );
        collection.Commit("proposed");
        using var host = await RunAsync(collection, program, "collection.yml", HostEvent.PullRequest(collection));
        var check = host.Jobs["check"];
        var line =
            Array.FindIndex(collection.Read("boards/SP-0008.md").Split('\n'), text => text.Contains("PO-0B", StringComparison.Ordinal)) + 1;
        var run = check.Script("The records");
        Assert.Equal((JobEnd.Failed, 1), (check.End, run.Exit));
        Assert.Contains(FormattableString.Invariant($"::error file=boards/SP-0008.md,line={line},col="), run.Out, StringComparison.Ordinal);
        Assert.Contains("capacitance said 31.8 µF and says 31.9 µF", run.Out, StringComparison.Ordinal);
        Assert.Contains("boards/SP-0008.md", Sarif(check));

        // What it changes is told and kept all the same.
        Assert.NotEqual(string.Empty, check.Summary);
        Assert.Contains("ohmstead-changes", check.Kept.Keys);
    }

    [Fact]
    public async Task The_main_branch_becomes_pages_and_a_mistake_in_it_does_not_keep_them_back()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var program = ProgramRepository.Make();
        using var collection = Demo(program);
        Change(collection, "boards/SP-0008.md", text => text.Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        collection.Commit("a mistake");
        using var host = await RunAsync(collection, program, "pages.yml", HostEvent.Push(collection));
        var build = host.Jobs["build"];
        Assert.Equal([".: dotnet TEMP/ohmstead/ohmstead.dll report . --to TEMP/pages"], build.Calls.Skip(1));
        Assert.Equal(Path.Combine(build.Temp, "pages"), build.Artifact);
        Assert.True(File.Exists(Path.Combine(build.Artifact!, "boards/SP-0008.html")));
        Assert.Equal((JobEnd.Succeeded, "https://example.org/boards/"), (host.Jobs["publish"].End, host.Jobs["publish"].Address));
    }

    [Fact]
    public async Task Records_that_are_gone_keep_the_old_pages()
    {
        using var program = ProgramRepository.Make();
        using var collection = Demo(program);
        Directory.Delete(Path.Combine(collection.Root, "boards"), recursive: true);
        collection.Commit("gone");
        using var host = await RunAsync(collection, program, "pages.yml", HostEvent.Push(collection));
        Assert.Equal(
            (JobEnd.Failed, null, JobEnd.Skipped),
            (host.Jobs["build"].End, host.Jobs["build"].Artifact, host.Jobs["publish"].End)
        );
    }

    private static string?[] Sarif(JobRun check) =>
        [
            .. JsonDocument
                .Parse(File.ReadAllText(Path.Combine(check.Temp, "findings.sarif")))
                .RootElement.GetProperty("runs")[0]
                .GetProperty("results")
                .EnumerateArray()
                .Select(result =>
                    result
                        .GetProperty("locations")[0]
                        .GetProperty("physicalLocation")
                        .GetProperty("artifactLocation")
                        .GetProperty("uri")
                        .GetString()
                ),
        ];

    // The workflow is the one in the repository, as the host would read it.
    private static async Task<WorkflowHost> RunAsync(
        ScratchRepository collection,
        ScratchRepository program,
        string workflow,
        HostEvent started
    )
    {
#pragma warning disable CA2000 // Handed to the test, which looks at what the run left and disposes of it.
        var host = new WorkflowHost(
            WorkflowFile.Parse(collection.Read(".github/workflows/" + workflow)),
            started,
            ("lighthouse/records", collection),
            (ProgramRepository.Name, program)
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

    private static ScratchRepository Demo(ScratchRepository program)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
        var repository = ScratchRepository.Empty();
        CollectionCopy.Put(repository.Root);
        Start(repository, program, "Saltmarsh Point");
        repository.Commit("main");
        return repository;
    }

    private static void Start(ScratchRepository collection, ScratchRepository program, string name)
    {
        var source = $"{ProgramRepository.Name}@{program.Git("rev-parse", "HEAD").Trim()}";
        string[] words = ["start", "collection", collection.Root, "--name", name, "--as-of", "2026-11-25", "--program", source, "--pages"];
        Assert.Contains(".github/workflows/collection.yml: written\n", Run.Of(words).Out, StringComparison.Ordinal);
    }

    private static void Change(ScratchRepository repository, string path, Func<string, string> change)
    {
        var was = repository.Read(path);
        var now = change(was);
        Assert.NotEqual(was, now);
        File.WriteAllText(Path.Combine(repository.Root, path), now);
    }
}
