using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;
using YamlDotNet.RepresentationModel;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The workflow that makes a release: what starts it, what each job may do, and that it names every machine. Its steps are run by
/// the tests of the published program.</summary>
public sealed partial class ReleaseWorkflowTests
{
    private static readonly WorkflowFile Release = WorkflowRulesTests.Read("release.yml");

    private static readonly string[] Machines = File.ReadAllLines(ProjectFolder.At(".github/release/machines"));

    [Fact]
    public void A_tag_starts_it_and_a_hand_starts_a_rehearsal_that_publishes_nothing()
    {
        Assert.Equal(
            ["push", "workflow_dispatch"],
            Release.Events.Children.Keys.Select(key => key.ToString()).Order(StringComparer.Ordinal)
        );
        Assert.Equal("{ { tags, [ v* ] } }", Release.Events.Mapping("push").ToString());
        Assert.Equal(
            ["provenance", "materials", "publish"],
            Release.Jobs.Where(job => job.Condition == "github.event_name == 'push'").Select(job => job.Name)
        );
        Assert.DoesNotContain("secrets.", WorkflowRulesTests.Text("release.yml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_may_write_is_whoever_must_and_then_only_what_must_be_written()
    {
        Assert.Equal([new("contents", "read")], Release.Permissions!);
        var more = Release
            .Jobs.Where(job => job.Permissions is not null)
            .ToDictionary(
                job => job.Name,
                job => string.Join(", ", job.Permissions!.Select(pair => $"{pair.Key}: {pair.Value}")),
                StringComparer.Ordinal
            );
        Assert.Equal(
            [
                ("materials", "contents: read, id-token: write, attestations: write"),
                ("provenance", "contents: read, id-token: write, attestations: write"),
                ("publish", "contents: write"),
            ],
            more.Select(pair => (pair.Key, pair.Value)).Order()
        );
        // Whoever signs runs nothing of the repository, and neither builds nor unpacks.
        Assert.All(Release.Jobs.Where(job => job.Name is "materials" or "provenance"), job =>
        {
            Assert.DoesNotContain(job.Steps, step => step.Run is not null || step.Uses == KnownActions.Checkout);
            Assert.Equal(KnownActions.DownloadArtifact, job.Steps[0].Uses);
        });
        Assert.All(Release.Jobs.SelectMany(job => job.Steps).Where(step => step.Uses == KnownActions.Checkout), step =>
            Assert.Equal("false", step.With["persist-credentials"])
        );
    }

    [Fact]
    public void Nothing_is_published_before_it_was_made_checked_and_signed()
    {
        IReadOnlyList<string> Needs(string name) => Release.Jobs.Single(job => job.Name == name).Needs;
        Assert.Equal(["files", "provenance", "materials"], Needs("publish"));
        Assert.Equal(["files"], Needs("provenance"));
        Assert.Equal(["program", "musl"], Needs("files"));
        Assert.Equal(["tag"], Needs("program"));
        Assert.Equal(["tag"], Needs("musl"));
        Assert.All(Release.Jobs, job =>
            Assert.InRange(int.Parse(job.Node.Text("timeout-minutes")!, System.Globalization.CultureInfo.InvariantCulture), 1, 40)
        );
    }

    [Fact]
    public void Every_machine_is_built_once_and_its_bill_is_signed()
    {
        var built = new[] { "program", "musl" }.SelectMany(name =>
            Included(name).Select(entry => ((YamlMappingNode)entry).Text("machine")!)
        );
        Assert.Equal(Machines.Order(StringComparer.Ordinal), built.Order(StringComparer.Ordinal));
        Assert.Equal(Machines, ((YamlSequenceNode)Matrix("materials")["machine"]).Select(machine => machine.ToString()));
    }

    // What the action fetches for a runner must be one of those that are made.
    [Fact]
    public void The_action_asks_for_no_machine_that_a_release_has_not()
    {
        var asked = MachineOfAction()
            .Matches(File.ReadAllText(ProjectFolder.At(".github/actions/records/program.sh")))
            .Select(match => match.Groups[1].Value)
            .ToArray();
        Assert.InRange(asked.Length, 4, Machines.Length);
        Assert.Empty(asked.Except(Machines));
    }

    [Fact]
    public void Its_steps_are_scripts_that_a_person_can_run_and_that_stop_at_the_first_failure()
    {
        var called = Release
            .Jobs.SelectMany(job => job.Steps)
            .Where(step => step.Run is not null)
            .Select(step => Script().Match(step.Run!).Groups[1].Value)
            .Distinct()
            .ToArray();
        Assert.Equal(["tag", "publish", "try", "musl", "files", "release"], called);
        var scripts = Directory.GetFiles(ProjectFolder.At(".github/release"), "*.sh");
        Assert.All(scripts, script =>
        {
            Assert.StartsWith("#!/usr/bin/env bash\n", File.ReadAllText(script), StringComparison.Ordinal);
            Assert.Contains("\nset -euo pipefail\n", File.ReadAllText(script), StringComparison.Ordinal);
            Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(script).HasFlag(UnixFileMode.UserExecute), script);
        });
        // None is left over: it is a step, or another one calls it.
        var texts = scripts.ToDictionary(script => Path.GetFileNameWithoutExtension(script), File.ReadAllText, StringComparer.Ordinal);
        Assert.All(texts.Keys.Except(called), name =>
            Assert.Contains(texts, other => other.Key != name && other.Value.Contains($"/{name}.sh", StringComparison.Ordinal))
        );
    }

    private static YamlMappingNode Matrix(string job) =>
        Release.Jobs.Single(one => one.Name == job).Node.Mapping("strategy").Mapping("matrix");

    private static YamlSequenceNode Included(string job) => (YamlSequenceNode)Matrix(job)["include"];

    [GeneratedRegex("^\\.github/release/([a-z]+)\\.sh( \"\\$?[A-Z_]+\"| [a-z/]+)*$")]
    private static partial Regex Script();

    [GeneratedRegex(" machine=([a-z0-9-]+) ;;")]
    private static partial Regex MachineOfAction();
}
