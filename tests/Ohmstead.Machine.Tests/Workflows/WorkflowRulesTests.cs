using System.Text.RegularExpressions;
using Ohmstead.Starting;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>What holds for every workflow, the project's own and the one a collection begins with: little is allowed, and everything used
/// is known.</summary>
public sealed partial class WorkflowRulesTests
{
    private const string Started = "started/";
    private const string Commit = "0123456789abcdef0123456789abcdef01234567";

    public static TheoryData<string> Workflows =>
        ["build.yml", "collection.yml", "fuzz.yml", "started/collection.yml", "started/pages.yml", "started/comments.yml"];

    // What a release may do more has tests of its own.
    public static TheoryData<string> WithRelease => [.. Workflows.Select(row => row.Data), "release.yml"];

    public static TheoryData<string> ForPullRequests => ["build.yml", "collection.yml", "started/collection.yml"];

    public static TheoryData<string> WithScripts => ["build.yml", "collection.yml", "fuzz.yml", "release.yml", "started/pages.yml"];

    public static TheoryData<string> Actions => [.. ProgramRepository.Actions];

    [Theory]
    [MemberData(nameof(Workflows))]
    public void The_token_reads_and_only_publishing_and_commenting_may_do_more(string name)
    {
        var workflow = Read(name);
        var isComments = name == "started/comments.yml";
        Assert.Equal(
            isComments ? [] : new Dictionary<string, string>(StringComparer.Ordinal) { ["contents"] = "read" },
            workflow.Permissions
        );
        foreach (var job in workflow.Jobs.Where(job => job.Permissions is not null))
        {
            // Whoever may write runs one action, and checks nothing out.
            Assert.Equal(
                isComments ? ["actions: read", "pull-requests: write"] : ["id-token: write", "pages: write"],
                job.Permissions!.Select(pair => $"{pair.Key}: {pair.Value}").Order(StringComparer.Ordinal)
            );
            Assert.Equal(
                isComments ? $"{ProgramRepository.Name}/.github/actions/comment@{Commit}" : KnownActions.DeployPages,
                Assert.Single(job.Steps).Uses
            );
        }
    }

    [Fact]
    public void Comments_are_made_of_pull_requests_alone_and_by_the_main_branch()
    {
        var workflow = Read("started/comments.yml");
        Assert.Equal("{ { workflow_run, { { workflows, [ collection ] }, { types, [ completed ] } } } }", workflow.Events.ToString());
        Assert.Equal("github.event.workflow_run.event == 'pull_request'", Assert.Single(workflow.Jobs).Condition);
        Assert.Equal("collection", Read("started/collection.yml").Root.Text("name"));
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
    [MemberData(nameof(WithRelease))]
    public void Every_action_is_a_known_one_with_inputs_that_it_documents(string name) =>
        Assert.All(Read(name).Jobs.SelectMany(job => job.Steps), Documented);

    [Theory]
    [MemberData(nameof(WithScripts))]
    public void Scripts_run_under_a_shell_that_stops_at_the_first_failure_and_hold_no_expression_of_the_host(string name)
    {
        var workflow = Read(name);
        Assert.Equal("bash", workflow.DefaultShell);
        Assert.All(workflow.Jobs.SelectMany(job => job.Steps).Where(step => step.Run is not null), step =>
            Assert.DoesNotContain("${{", step.Run, StringComparison.Ordinal)
        );
    }

    // A script of an action is a file of its own, which these tests run; its inputs come by the environment.
    [Theory]
    [MemberData(nameof(Actions))]
    public void A_step_of_an_action_runs_a_file_under_such_a_shell_or_a_known_action(string name)
    {
        var action = ActionFile.Read(ProjectFolder.At($".github/actions/{name}/action.yml"));
        Assert.All(action.Steps, Documented);
        Assert.All(action.Steps.Where(step => step.Run is not null), step =>
        {
            Assert.Equal("bash", step.Shell);
            var script = Assert.Single(ScriptOfAction().Matches(step.Run!)).Groups[1].Value;
            var path = ProjectFolder.At($".github/actions/{name}/{script}");
            Assert.StartsWith("#!/usr/bin/env bash\n", File.ReadAllText(path), StringComparison.Ordinal);
            Assert.Contains("\nset -euo pipefail\n", File.ReadAllText(path), StringComparison.Ordinal);
            Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(path).HasFlag(UnixFileMode.UserExecute));
        });
        Assert.All(
            File.ReadAllLines(ProjectFolder.At($".github/actions/{name}/action.yml"))
                .Where(line => line.Contains("uses: ", StringComparison.Ordinal)),
            Pinned
        );
    }

    [GeneratedRegex("^\"\\$GITHUB_ACTION_PATH/([a-z]+\\.sh)\"$")]
    private static partial Regex ScriptOfAction();

    // Its inputs, and that it is there: an action of our own, or one of others that is known.
    private static void Documented(WorkflowStep step)
    {
        if (step.Uses is not { } uses)
        {
            return;
        }

        var own = uses.IndexOf("/.github/actions/", StringComparison.Ordinal);
        var inputs =
            own >= 0
                ? ActionFile.Read(ProjectFolder.At(uses[(own + 1)..].Split('@')[0] + "/action.yml")).Inputs.Keys
                : Assert.Contains(uses, (IReadOnlyDictionary<string, string[]>)KnownActions.Inputs);
        Assert.Empty(step.With.Keys.Except(inputs));
    }

    private static void Pinned(string line) =>
        Assert.Matches(
            "uses: ([a-z-]+/[a-z-]+@[0-9a-f]{40} # v[0-9]+\\.[0-9]+\\.[0-9]+|[a-z./-]*/\\.github/actions/[a-z]+(@[0-9a-f]{40})?)$",
            line
        );

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
    [MemberData(nameof(WithRelease))]
    public void Every_action_is_named_by_its_commit_with_its_version_behind_it(string name)
    {
        var lines = Text(name).Split('\n').Where(line => line.Contains("uses: ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(lines);
        Assert.All(lines, Pinned);
    }

    [Theory]
    [InlineData("build.yml")]
    [InlineData("collection.yml")]
    [InlineData("fuzz.yml")]
    [InlineData("release.yml")]
    public void Every_job_has_a_name_that_says_what_it_looks_at(string name) =>
        Assert.All(Read(name).Jobs, job => Assert.False(string.IsNullOrEmpty(job.Node.Text("name"))));

    internal static string Text(string name) =>
        name.StartsWith(Started, StringComparison.Ordinal)
            ? Assert
                .Single(
                    CollectionFiles.OfRepository(new(new(ProgramRepository.Name, Commit), "main", HasPages: true, HasComments: true)),
                    file => file.Path == ".github/workflows/" + name[Started.Length..]
                )
                .Text
            : File.ReadAllText(ProjectFolder.At(".github/workflows/" + name));

    internal static WorkflowFile Read(string name) => WorkflowFile.Parse(Text(name));
}
