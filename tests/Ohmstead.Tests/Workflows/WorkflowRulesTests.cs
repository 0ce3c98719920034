using Ohmstead.Starting;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Workflows;

/// <summary>What holds for every workflow, the project's own and the one a collection begins with: little is allowed, and everything used
/// is known.</summary>
public sealed class WorkflowRulesTests
{
    public static TheoryData<string> Workflows => ["build.yml", "collection.yml", "fuzz.yml", "a collection's"];

    public static TheoryData<string> ForPullRequests => ["build.yml", "collection.yml", "a collection's"];

    [Theory]
    [MemberData(nameof(Workflows))]
    public void The_token_reads_and_only_publishing_may_do_more(string name)
    {
        var workflow = Read(name);
        Assert.Equal(new Dictionary<string, string>(StringComparer.Ordinal) { ["contents"] = "read" }, workflow.Permissions);
        foreach (var job in workflow.Jobs.Where(job => job.Permissions is not null))
        {
            Assert.Equal(["id-token", "pages"], job.Permissions!.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(KnownActions.DeployPages, Assert.Single(job.Steps).Uses);
        }
    }

    [Theory]
    [MemberData(nameof(ForPullRequests))]
    public void A_pull_request_is_never_run_with_the_rights_of_the_main_branch(string name)
    {
        var workflow = Read(name);
        Assert.Equal(["pull_request", "push"], workflow.Events.Children.Keys.Select(key => key.ToString()).Order(StringComparer.Ordinal));
        Assert.Equal("[ main ]", workflow.Events.Mapping("push")["branches"].ToString());
        Assert.DoesNotContain("secrets.", Text(name), StringComparison.Ordinal);
        Assert.All(workflow.Jobs.SelectMany(job => job.Steps).Where(step => step.Uses == KnownActions.Checkout), step =>
            Assert.Equal("false", step.With["persist-credentials"])
        );
    }

    [Theory]
    [MemberData(nameof(Workflows))]
    public void Every_action_is_a_known_one_with_inputs_that_it_documents(string name) =>
        Assert.All(Read(name).Jobs.SelectMany(job => job.Steps).Where(step => step.Uses is not null), step =>
            Assert.Empty(step.With.Keys.Except(Assert.Contains(step.Uses!, (IReadOnlyDictionary<string, string[]>)KnownActions.Inputs)))
        );

    [Theory]
    [MemberData(nameof(Workflows))]
    public void Scripts_run_under_a_shell_that_stops_at_the_first_failure_and_hold_no_expression_of_the_host(string name)
    {
        var workflow = Read(name);
        Assert.Equal("bash", workflow.DefaultShell);
        Assert.All(workflow.Jobs.SelectMany(job => job.Steps).Where(step => step.Run is not null), step =>
            Assert.DoesNotContain("${{", step.Run, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Fuzzing_looks_at_the_main_branch_alone_and_every_week()
    {
        Assert.Equal(
            ["schedule", "workflow_dispatch"],
            Read("fuzz.yml").Events.Children.Keys.Select(key => key.ToString()).Order(StringComparer.Ordinal)
        );
        Assert.Contains(
            "tests/Ohmstead.Fuzz/fuzz.sh",
            Assert
                .Single(Read("fuzz.yml").Jobs)
                .Steps.Select(step => step.Run ?? string.Empty)
                .Single(run => run.Contains("fuzz.sh", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [MemberData(nameof(ForPullRequests))]
    public void Every_job_that_somebody_waits_for_ends_by_itself(string name) =>
        Assert.All(Read(name).Jobs, job =>
            Assert.InRange(int.Parse(job.Node.Text("timeout-minutes")!, System.Globalization.CultureInfo.InvariantCulture), 1, 30)
        );

    [Fact]
    public void Building_and_testing_the_project_is_one_script_that_a_person_can_run()
    {
        var job = Read("build.yml").Jobs.Single(job => job.Node.Text("runs-on") == "ubuntu-latest");
        Assert.Equal(".ci/run", Assert.Single(job.Steps, step => step.Run is not null).Run);
        Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(ProjectFolder.At(".ci/run")).HasFlag(UnixFileMode.UserExecute));
        Assert.True(
            File.Exists(ProjectFolder.At(Assert.Single(job.Steps, step => step.Uses == KnownActions.SetupDotnet).With["global-json-file"]))
        );
    }

    [Fact]
    public void The_layers_are_tested_on_the_other_systems_too()
    {
        var others = Read("build.yml").Jobs.Where(job => job.Node.Text("runs-on") is "windows-latest" or "macos-latest").ToList();
        Assert.Equal(2, others.Count);
        foreach (var script in others.Select(job => string.Join('\n', job.Steps.Select(step => step.Run))))
        {
            Assert.Contains("tests/Ohmstead.$layer.Tests", script, StringComparison.Ordinal);
            Assert.Contains("dotnet run --project src/Ohmstead -- report records", script, StringComparison.Ordinal);
        }
    }

    // A tag can be moved to other code; a commit is what it is. The tag stands behind it for people and for the updates.
    [Theory]
    [MemberData(nameof(Workflows))]
    public void Every_action_is_named_by_its_commit_with_its_version_behind_it(string name)
    {
        var lines = Text(name).Split('\n').Where(line => line.Contains("uses: ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches("uses: [a-z-]+/[a-z-]+@[0-9a-f]{40} # v[0-9]+\\.[0-9]+\\.[0-9]+$", line));
    }

    [Theory]
    [InlineData("build.yml")]
    [InlineData("collection.yml")]
    [InlineData("fuzz.yml")]
    public void Every_job_has_a_name_that_says_what_it_looks_at(string name) =>
        Assert.All(Read(name).Jobs, job => Assert.False(string.IsNullOrEmpty(job.Node.Text("name"))));

    internal static string Text(string name) =>
        name == "a collection's"
            ? Assert.Single(CollectionFiles.OfRepository("saltmarsh/ohmstead", "main"), file => file.Path == CollectionFiles.Workflow).Text
            : File.ReadAllText(ProjectFolder.At(".github/workflows/" + name));

    internal static WorkflowFile Read(string name) => WorkflowFile.Parse(Text(name));
}
