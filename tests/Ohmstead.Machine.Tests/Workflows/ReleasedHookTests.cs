using System.Diagnostics;
using System.Security.Cryptography;
using Ohmstead.Tests.Support;
using YamlDotNet.RepresentationModel;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The hook that brings a program of its own, from a release: fetched once, and used only when it is the one that was
/// meant.</summary>
/// <remarks>The host of the release is a folder: curl is stood in for by a script that copies from it, and writes down what it was asked
/// for.</remarks>
public sealed class ReleasedHookTests : IDisposable
{
    private const string Address = "https://example.org/release/v1";
    private const string Archive = "ohmstead-linux-x64.tar.gz";

    private const string Curl = """
        #!/bin/sh
        for word; do address=$word; done
        while [ $# -gt 1 ]; do [ "$1" = --output ] && to=$2; shift; done
        echo "$address" >> "$RELEASED/asked"
        cp "$RELEASED/${address##*/}" "$to" 2> /dev/null || { echo "curl: (22) The requested URL returned error: 404" >&2; exit 22; }

        """;

    // Says what it was called with and which boards it sees.
    private const string Program = """
        #!/bin/sh
        echo "$1 ${2##*/}"
        cat "$2"/boards/*

        """;

    private readonly CollectionCopy served = CollectionCopy.Empty();
    private readonly ScratchRepository repository = ScratchRepository.Empty();

    public ReleasedHookTests()
    {
        Assert.SkipWhen(
            !OperatingSystem.IsLinux() || System.Runtime.InteropServices.RuntimeInformation.OSArchitecture.ToString() != "X64",
            "the archive of these tests is for Linux on x64"
        );
        ScratchRepository.Script(served.At("curl"), string.Empty);
        served.Write("curl", Curl);
        served.Write("in/ohmstead", Program);
        using var tar = Process.Start("sh", ["-c", $"cd '{served.Root}' && chmod +x in/ohmstead curl && tar -czf {Archive} -C in ."]);
        tar.WaitForExit();
        Assert.Equal(0, tar.ExitCode);
        repository.Write("the records/boards/SP-0001.md", "staged\n");
        repository.Git("add", "--all");
        repository.Write("the records/boards/SP-0001.md", "lying there\n");
    }

    private string Sum => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(served.At(Archive))));

    private string[] Asked => File.Exists(served.At("asked")) ? File.ReadAllLines(served.At("asked")) : [];

    [Fact]
    public async Task It_looks_where_the_other_hook_looks()
    {
        var text = await File.ReadAllTextAsync(ProjectFolder.At(".pre-commit-hooks.yaml"), TestContext.Current.CancellationToken);
        var yaml = new YamlStream();
        using var reader = new StringReader(text);
        yaml.Load(reader);
        var hooks = ((YamlSequenceNode)yaml.Documents[0].RootNode).Cast<YamlMappingNode>().ToList();
        Assert.Equal(["ohmstead-check", "ohmstead-check-released"], hooks.Select(hook => hook.Text("id")));
        Assert.All(["language", "files", "pass_filenames"], key => Assert.Equal(hooks[0].Text(key), hooks[1].Text(key)));
        Assert.Equal(".github/actions/records/hook.sh", hooks[1].Text("entry"));
    }

    [Fact]
    public async Task It_fetches_the_release_once_and_checks_what_is_staged_with_it()
    {
        for (var time = 0; time < 2; time++)
        {
            var run = await RunAsync($"--release {Address}/ --sha256 {new string('0', 64)} --sha256 {Sum} 'the records'");
            Assert.Equal((0, "check the records\nstaged\n", string.Empty), (run.Exit, run.Out, run.Error));
            // The first sum is that of another machine: its turn came first, and nothing of it was kept.
            Assert.Equal([$"{Address}/{Archive}", $"{Address}/{Archive}"], Asked);
        }

        var kept = Directory.GetDirectories(Path.Combine(served.At("a home"), ".cache/ohmstead")).Select(Path.GetFileName);
        Assert.Equal([$"linux-x64-{Sum}"], kept);
    }

    public static TheoryData<string, string> Refused { get; } =
        new()
        {
            { $"--release {Address} --sha256 BAD", $"{Archive} is not the one that was meant: its SHA-256 is SUM and BAD was expected" },
            { $"--release {Address}", "nobody wrote down which archive is meant: write args: [--release, ADDRESS, --sha256, DIGITS]" },
            { "--sha256 SUM", "nothing says which release checks them: write args: [--release, ADDRESS, --sha256, DIGITS]" },
            { "--release http://example.org/v1 --sha256 SUM", "nothing says which release checks them" },
            { $"--release {Address} --sha256 abc", "'abc' is no SHA-256: sixty-four small hexadecimal digits were expected" },
            { $"--release {Address} --sha256 ../../x", "'../../x' is no SHA-256" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task What_was_not_meant_is_refused_in_one_line_and_never_run(string words, string told)
    {
        string Filled(string text) =>
            text.Replace("SUM", Sum, StringComparison.Ordinal).Replace("BAD", new string('b', 64), StringComparison.Ordinal);
        var run = await RunAsync(Filled(words));
        Assert.Equal((1, string.Empty), (run.Exit, run.Out));
        Assert.StartsWith(
            "the records were not checked: " + Filled(told),
            Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
        // The one that the archive was made of, and no other.
        Assert.Single(Directory.EnumerateFiles(served.Root, "ohmstead", SearchOption.AllDirectories));
    }

    public void Dispose()
    {
        served.Dispose();
        repository.Dispose();
    }

    // As the manager calls it: at the root of the repository, by the path of the file in its own clone.
    private Task<Run> RunAsync(string words) =>
        Child.ShellAsync(
            $"'{ProjectFolder.At(".github/actions/records/hook.sh")}' {words}",
            repository.Root,
            ("PATH", $"{served.Root}:{Environment.GetEnvironmentVariable("PATH")}"),
            ("RELEASED", served.Root),
            ("HOME", served.At("a home")),
            ("XDG_CACHE_HOME", string.Empty),
            ("OHMSTEAD", "no-such-program")
        );
}
