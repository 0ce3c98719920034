using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Workflows;

/// <summary>Runs the jobs of a workflow as the host documents it: a fresh folder for each, its variables, its shell, a checkout of real
/// repositories.</summary>
/// <remarks>
/// Only obtaining the program is stood in for, since building it takes minutes: a script named dotnet, first on the path, answers "publish"
/// with the program that was built with the tests, and hands every other command line to the real one. It writes down each command line,
/// for the tests to read.
/// </remarks>
/// <param name="workflow">The workflow.</param>
/// <param name="started">What started it.</param>
/// <param name="repositories">The repositories that can be checked out; the first is the workflow's own.</param>
internal sealed class WorkflowHost(
    WorkflowFile workflow,
    HostEvent started,
    params (string Name, ScratchRepository Repository)[] repositories
) : IDisposable
{
    private const string StandIn = """
        #!/bin/sh
        echo "$PWD: dotnet $*" >> "$RUNNER_TEMP/calls"
        if [ "$1" != publish ]; then
          PATH=${PATH#*:}
          exec dotnet "$@"
        fi
        [ -f "$2/Ohmstead.csproj" ] && [ "$5" = --output ] && ln -s "$BUILT" "$6"

        """;

    private readonly string root = Directory.CreateTempSubdirectory("ohmstead-host-").FullName;

    private readonly Dictionary<string, JobRun> jobs = new(StringComparer.Ordinal);

    /// <summary>The jobs that were run or skipped, by name.</summary>
    public IReadOnlyDictionary<string, JobRun> Jobs => jobs;

    /// <summary>Runs all jobs, each after those it needs.</summary>
    public async Task<WorkflowHost> RunAsync()
    {
        Write("bin/dotnet", StandIn);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(
                Path.Combine(root, "bin/dotnet"),
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
            );
        }

        while (workflow.Jobs.FirstOrDefault(job => !jobs.ContainsKey(job.Name) && job.Needs.All(jobs.ContainsKey)) is { } next)
        {
            jobs[next.Name] = await RunAsync(next, [.. next.Needs.Select(need => jobs[need])]);
        }

        Assert.Equal(workflow.Jobs.Count, jobs.Count);
        return this;
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    private async Task<JobRun> RunAsync(WorkflowJob job, JobRun[] needed)
    {
        var run = new JobRun(Folder(job.Name, "workspace"), Folder(job.Name, "temp"));
        var known = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["github.event_name"] = started.Name,
            ["github.ref"] = started.Ref,
            ["runner.temp"] = run.Temp,
        };
        if (started.Base is not null)
        {
            known["github.event.pull_request.base.sha"] = started.Base;
        }

        var expressions = new Expressions(known);
        if (needed.Any(need => need.End != JobEnd.Succeeded) || !expressions.Holds(job.Condition))
        {
            return run;
        }

        run.End = JobEnd.Succeeded;
        foreach (var (name, value) in workflow.Environment.Concat(job.Environment))
        {
            known["env." + name] = expressions.Fill(value);
        }

        // Without a condition of its own a step is run only while everything before it went well.
        foreach (var step in job.Steps.TakeWhile(_ => run.End == JobEnd.Succeeded).Where(step => expressions.Holds(step.Condition)))
        {
            await (step.Uses is null ? ScriptAsync(step, run, known) : UseAsync(step, run, job, needed, known));
        }

        run.Address = run.End == JobEnd.Succeeded && job.DeploysTo.TryGetValue("url", out var address) ? expressions.Fill(address) : null;
        return run;
    }

    private async Task ScriptAsync(WorkflowStep step, JobRun run, Dictionary<string, string> known)
    {
        var expressions = new Expressions(known);
        var number = run.Scripts.Count.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var (script, output, summary) = (
            Path.Combine(run.Temp, number + ".sh"),
            Path.Combine(run.Temp, number + ".output"),
            Path.Combine(run.Temp, number + ".summary")
        );
        await File.WriteAllTextAsync(script, expressions.Fill(step.Run!));
        await File.WriteAllTextAsync(output, string.Empty);
        await File.WriteAllTextAsync(summary, string.Empty);

        // The command lines that the host documents for its shells.
        string[] shell = (step.Shell ?? workflow.DefaultShell) switch
        {
            "bash" => ["--noprofile", "--norc", "-eo", "pipefail", script],
            null => ["-e", script],
            var other => throw new InvalidOperationException($"no test knows the shell '{other}'"),
        };
        var start = new ProcessStartInfo("bash", shell)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.Combine(run.Workspace, expressions.Fill(step.Folder ?? ".")),
        };
        foreach (
            var (name, value) in new[]
            {
                ("CI", "true"),
                ("GITHUB_ACTIONS", "true"),
                ("GITHUB_EVENT_NAME", started.Name),
                ("GITHUB_REF", started.Ref),
                ("GITHUB_SHA", started.Commit),
                ("GITHUB_REPOSITORY", repositories[0].Name),
                ("GITHUB_WORKSPACE", run.Workspace),
                ("GITHUB_OUTPUT", output),
                ("GITHUB_STEP_SUMMARY", summary),
                ("RUNNER_OS", "Linux"),
                ("RUNNER_TEMP", run.Temp),
                ("PATH", $"{Path.Combine(root, "bin")}:{Environment.GetEnvironmentVariable("PATH")}"),
                ("BUILT", AppContext.BaseDirectory.TrimEnd('/')),
                ("SOURCE_DATE_EPOCH", Child.Day),
            }
        )
        {
            start.Environment[name] = value;
        }

        foreach (var (name, value) in known.Where(entry => entry.Key.StartsWith("env.", StringComparison.Ordinal)))
        {
            start.Environment[name["env.".Length..]] = value;
        }

        foreach (var (name, value) in step.Environment)
        {
            start.Environment[name] = expressions.Fill(value);
        }

        using var process = Process.Start(start)!;
        var ended = await Child.EndAsync(process);
        run.Scripts.Add((step.Name, ended));
        run.End = ended.Exit == 0 ? JobEnd.Succeeded : JobEnd.Failed;
        foreach (var line in step.Id is null ? [] : await File.ReadAllLinesAsync(output))
        {
            known[$"steps.{step.Id}.outputs.{line.Split('=')[0]}"] = line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..];
        }
    }

    private Task UseAsync(WorkflowStep step, JobRun run, WorkflowJob job, JobRun[] needed, Dictionary<string, string> known)
    {
        var expressions = new Expressions(known);
        var with = step.With.ToDictionary(input => input.Key, input => expressions.Fill(input.Value), StringComparer.Ordinal);
        switch (step.Uses)
        {
            case KnownActions.Checkout:
                Checkout(with, Path.GetFullPath(Path.Combine(run.Workspace, with.GetValueOrDefault("path", "."))));
                break;
            case KnownActions.SetupDotnet:
                Assert.True(
                    File.Exists(Path.Combine(run.Workspace, with["global-json-file"])),
                    $"{with["global-json-file"]} is not there when the SDK is asked for"
                );
                break;
            case KnownActions.UploadPages:
                Assert.True(File.Exists(Path.Combine(with["path"], "index.html")), $"{with["path"]} has no index.html to publish");
                run.Artifact = with["path"];
                break;
            case KnownActions.DeployPages:
                Assert.Single(needed, need => need.Artifact is not null);
                Assert.Equal(
                    ("write", "write"),
                    (job.Permissions?.GetValueOrDefault("pages"), job.Permissions?.GetValueOrDefault("id-token"))
                );
                Assert.Equal("github-pages", job.DeploysTo["name"]);
                known[$"steps.{step.Id}.outputs.page_url"] = "https://example.org/boards/";
                break;
            default:
                throw new InvalidOperationException($"no test knows the action '{step.Uses}'");
        }

        return Task.CompletedTask;
    }

    private void Checkout(Dictionary<string, string> with, string folder)
    {
        var (own, ownRepository) = repositories[0];
        var called = with.GetValueOrDefault("repository", own);
        var repository = called == own ? ownRepository : Assert.Single(repositories, known => known.Name == called).Repository;
        var wanted = with.GetValueOrDefault("ref", string.Empty);
        repository.Git("clone", "--quiet", "--no-checkout", repository.Root, folder);
        if (with.TryGetValue("sparse-checkout", out var patterns))
        {
            Assert.Equal("false", with["sparse-checkout-cone-mode"]);
            repository.Git([
                "-C",
                folder,
                "sparse-checkout",
                "set",
                "--no-cone",
                .. patterns.Split('\n', StringSplitOptions.RemoveEmptyEntries),
            ]);
        }

        repository.Git(
            "-C",
            folder,
            "checkout",
            "--quiet",
            "--detach",
            wanted.Length > 0 ? wanted
                : called == own ? started.Commit
                : "HEAD"
        );
    }

    private string Folder(string job, string name) => Directory.CreateDirectory(Path.Combine(root, "jobs", job, name)).FullName;

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(root, path))!);
        File.WriteAllText(Path.Combine(root, path), text);
    }
}
