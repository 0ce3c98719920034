using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>Runs the jobs of a workflow as the host documents it: a fresh folder for each, its variables, its shell, a checkout of real
/// repositories.</summary>
/// <remarks>
/// Actions of our own are run step by step from their repository. Only obtaining the program is stood in for, since building it takes
/// minutes: a script named dotnet, first on the path, answers "publish" with the program that was built with the tests, and hands every
/// other command line to the real one. It writes down each command line, for the tests to read.
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
          PATH=$REAL_PATH exec dotnet "$@"
        fi
        [ -f "$2/Ohmstead.csproj" ] && [ "$5" = --output ] && ln -s "$BUILT" "$6"

        """;

    private readonly string root = Directory.CreateTempSubdirectory("ohmstead-host-").FullName;

    private readonly Dictionary<string, JobRun> jobs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> tools = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> environment = new(StringComparer.Ordinal);

    /// <summary>Puts a program first on the path of every step.</summary>
    public WorkflowHost With(string name, string script)
    {
        tools[name] = script;
        return this;
    }

    /// <summary>Sets a variable for every step.</summary>
    public WorkflowHost Set(string name, string value)
    {
        environment[name] = value;
        return this;
    }

    /// <summary>The jobs that were run or skipped, by name.</summary>
    public IReadOnlyDictionary<string, JobRun> Jobs => jobs;

    /// <summary>Runs all jobs, each after those it needs.</summary>
    public async Task<WorkflowHost> RunAsync()
    {
        Tool("dotnet", StandIn);
        foreach (var (name, script) in tools)
        {
            Tool(name, script);
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
            ["github.token"] = "token",
            ["runner.temp"] = run.Temp,
        };
        foreach (var (name, value) in started.Told)
        {
            known[name] = value;
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

        await StepsAsync(job.Steps, new(run, job, needed, known, null));
        run.Address = run.End == JobEnd.Succeeded && job.DeploysTo.TryGetValue("url", out var address) ? expressions.Fill(address) : null;
        return run;
    }

    // Without a condition of its own a step is run only while everything before it went well; the status functions alone change that.
    private async Task StepsAsync(IReadOnlyList<WorkflowStep> steps, Scope scope)
    {
        foreach (var step in steps)
        {
            var isAlways = step.Condition?.Contains("always()", StringComparison.Ordinal) == true;
            if ((scope.Run.End == JobEnd.Succeeded || isAlways) && new Expressions(scope.Known).Holds(step.Condition))
            {
                await (step.Uses is null ? ScriptAsync(step, scope) : UseAsync(step, scope));
            }
        }
    }

    private async Task ScriptAsync(WorkflowStep step, Scope scope)
    {
        var (run, known) = (scope.Run, scope.Known);
        var expressions = new Expressions(known);
        var number = run.Scripts.Count.ToString(System.Globalization.CultureInfo.InvariantCulture);
        string Told(string kind) => Path.Combine(run.Temp, $"{number}.{kind}");
        await File.WriteAllTextAsync(Told("sh"), expressions.Fill(step.Run!));
        foreach (var kind in new[] { "output", "summary", "path" })
        {
            await File.WriteAllTextAsync(Told(kind), string.Empty);
        }

        // The command lines that the host documents for its shells. A step of an action names its own.
        string[] shell = (step.Shell ?? (scope.Action is null ? workflow.DefaultShell : "none")) switch
        {
            "bash" => ["--noprofile", "--norc", "-eo", "pipefail", Told("sh")],
            null => ["-e", Told("sh")],
            var other => throw new InvalidOperationException($"no test knows the shell '{other}'"),
        };
        var start = new ProcessStartInfo("bash", shell)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.Combine(run.Workspace, expressions.Fill(step.Folder ?? ".")),
        };
        var real = Environment.GetEnvironmentVariable("PATH");
        foreach (
            var (name, value) in new[]
            {
                ("CI", "true"),
                ("GITHUB_ACTIONS", "true"),
                ("GITHUB_EVENT_NAME", started.Name),
                ("GITHUB_REF", started.Ref),
                ("GITHUB_SHA", started.Commit),
                ("GITHUB_REPOSITORY", repositories[0].Name),
                ("GITHUB_SERVER_URL", "https://example.org"),
                ("GITHUB_WORKSPACE", run.Workspace),
                ("GITHUB_OUTPUT", Told("output")),
                ("GITHUB_PATH", Told("path")),
                ("GITHUB_STEP_SUMMARY", Told("summary")),
                ("RUNNER_OS", "Linux"),
                ("RUNNER_ARCH", "X64"),
                ("RUNNER_TEMP", run.Temp),
                ("PATH", string.Join(':', [.. Enumerable.Reverse(scope.Paths), Path.Combine(root, "bin"), real])),
                ("REAL_PATH", real!),
                ("BUILT", AppContext.BaseDirectory.TrimEnd('/')),
                ("SOURCE_DATE_EPOCH", Child.Day),
            }
        )
        {
            start.Environment[name] = value;
        }

        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        if (scope.Action is not null)
        {
            start.Environment["GITHUB_ACTION_PATH"] = scope.Action;
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
        run.End = ended.Exit == 0 ? run.End : JobEnd.Failed;
        run.Summary += await File.ReadAllTextAsync(Told("summary"));
        scope.Paths.AddRange(await File.ReadAllLinesAsync(Told("path")));
        foreach (var line in step.Id is null ? [] : await File.ReadAllLinesAsync(Told("output")))
        {
            known[$"steps.{step.Id}.outputs.{line.Split('=')[0]}"] = line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..];
        }
    }

    private async Task UseAsync(WorkflowStep step, Scope scope)
    {
        var (run, job, needed, known, _) = scope;
        var expressions = new Expressions(known);
        var with = step.With.ToDictionary(input => input.Key, input => expressions.Fill(input.Value), StringComparer.Ordinal);
        switch (step.Uses)
        {
            case KnownActions.Checkout:
                Checkout(with, Path.GetFullPath(Path.Combine(run.Workspace, with.GetValueOrDefault("path", "."))));
                break;
            case KnownActions.SetupDotnet:
                // The SDK is named, or a file of the workspace names it: others are not looked for.
                Assert.True(
                    with.TryGetValue("dotnet-version", out var sdk)
                        ? Version.TryParse(sdk, out _)
                        : File.Exists(Path.Combine(run.Workspace, with["global-json-file"])),
                    "nothing names the SDK that is asked for"
                );
                break;
            case KnownActions.UploadArtifact:
                Assert.True(File.Exists(with["path"]), $"{with["path"]} is not there to be kept");
                run.Kept.Add(with["name"], with["path"]);
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
            case { } called when called.StartsWith("./", StringComparison.Ordinal):
                await ActionAsync(step, scope, with, Path.Combine(run.Workspace, called[2..]), string.Empty);
                break;
            case { } called when called.Split('@') is [var path, var revision] && path.Split('/', 3) is [var owner, var name, var within]:
                var folder = Path.Combine(root, "actions", owner, name, revision);
                if (!Directory.Exists(folder))
                {
                    var given = new Dictionary<string, string>(StringComparer.Ordinal)
                    {
                        ["repository"] = $"{owner}/{name}",
                        ["ref"] = revision,
                    };
                    Checkout(given, folder);
                }

                await ActionAsync(step, scope, with, Path.Combine(folder, within), $"{owner}/{name}");
                break;
            default:
                throw new InvalidOperationException($"no test knows the action '{step.Uses}'");
        }
    }

    // The steps of an action see its inputs and each other, and nothing that steps of the workflow said.
    private async Task ActionAsync(WorkflowStep step, Scope scope, Dictionary<string, string> with, string folder, string repository)
    {
        var action = ActionFile.Read(Path.Combine(folder, "action.yml"));
        Assert.Empty(with.Keys.Except(action.Inputs.Keys));
        var known = scope
            .Known.Where(entry => !entry.Key.StartsWith("steps.", StringComparison.Ordinal))
            .ToDictionary(StringComparer.Ordinal);
        // Whose action it is; of one that lies in the workspace the host tells nothing.
        known["github.action_repository"] = repository;
        foreach (var (name, usual) in action.Inputs)
        {
            known["inputs." + name] = with.GetValueOrDefault(name, usual);
        }

        await StepsAsync(action.Steps, scope with { Known = known, Action = folder });
        var expressions = new Expressions(known);
        foreach (var (name, value) in action.Outputs)
        {
            scope.Known[$"steps.{step.Id}.outputs.{name}"] = expressions.Fill(value);
        }
    }

    private void Checkout(Dictionary<string, string> with, string folder)
    {
        var (own, ownRepository) = repositories[0];
        var called = with.GetValueOrDefault("repository", own);
        var repository = called == own ? ownRepository : Assert.Single(repositories, known => known.Name == called).Repository;
        var wanted = with.GetValueOrDefault("ref", string.Empty);
        var commit =
            wanted.Length > 0 ? wanted
            : called == own ? started.Commit
            : "HEAD";

        // One commit where nothing is said of its past.
        repository.Git("init", "--quiet", folder);
        var depth = with.GetValueOrDefault("fetch-depth", "1");
        repository.Git([
            "-C",
            folder,
            "fetch",
            "--quiet",
            "--upload-pack=git -c uploadpack.allowAnySHA1InWant=true upload-pack",
            .. depth == "0" ? Array.Empty<string>() : ["--depth=" + depth],
            "file://" + repository.Root,
            commit,
        ]);
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

        repository.Git("-C", folder, "checkout", "--quiet", "--detach", "FETCH_HEAD");
    }

    private void Tool(string name, string script)
    {
        var path = Path.Combine(Directory.CreateDirectory(Path.Combine(root, "bin")).FullName, name);
        File.WriteAllText(path, script);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private string Folder(string job, string name) => Directory.CreateDirectory(Path.Combine(root, "jobs", job, name)).FullName;

    // Where a step runs: what is known there, and the folder of the action that it belongs to.
    private sealed record Scope(JobRun Run, WorkflowJob Job, JobRun[] Needed, Dictionary<string, string> Known, string? Action)
    {
        /// <summary>What steps put in front of the path, for all that follow.</summary>
        public List<string> Paths { get; init; } = [];
    }
}
