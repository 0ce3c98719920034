using System.Diagnostics;
using System.Security.Cryptography;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>How the action obtains the program from a release: what was not meant is neither unpacked nor run.</summary>
/// <remarks>The host of the release is a folder: curl is stood in for by a script that copies from it, and writes down what it was asked
/// for.</remarks>
public sealed class RecordsActionTests
{
    private const string Address = "https://example.org/release/v1";
    private const string Archive = "ohmstead-linux-x64.tar.gz";

    private const string Curl = """
        #!/bin/sh
        for word; do address=$word; done
        while [ $# -gt 1 ]; do [ "$1" = --output ] && to=$2; shift; done
        echo "$address" >> "$RUNNER_TEMP/asked"
        cp "$RELEASED/${address##*/}" "$to" 2> /dev/null || { echo "curl: (22) The requested URL returned error: 404" >&2; exit 22; }

        """;

    private const string Program = """
        #!/bin/sh
        echo "$@" >> "$RUNNER_TEMP/ran"

        """;

    [Fact]
    public async Task An_archive_is_used_when_its_sum_stands_beside_it()
    {
        using var release = new Release(Program);
        release.Say($"{new string('0', 64)}  other.tar.gz\n{release.Sum}  {Archive}\n");
        using var host = await release.RunAsync($"release: {Address}/");
        Assert.Equal(JobEnd.Succeeded, host.Jobs["check"].End);
        Assert.Equal([$"{Address}/{Archive}", $"{Address}/SHA256SUMS"], Lines(host, "asked"));
        Assert.Equal("check . --form annotations --thorough", Lines(host, "ran").Single().Split(" --also ")[0]);
    }

    [Fact]
    public async Task A_sum_that_the_keeper_wrote_down_counts_whatever_stands_beside_the_archive()
    {
        using var release = new Release(Program);
        release.Say($"{new string('0', 64)}  {Archive}\n");
        using var host = await release.RunAsync($"release: {Address}, sha256: {release.Sum}");
        Assert.Equal(JobEnd.Succeeded, host.Jobs["check"].End);
        Assert.Equal([$"{Address}/{Archive}"], Lines(host, "asked"));
        Assert.NotEmpty(Lines(host, "ran"));
    }

    [Fact]
    public async Task A_tag_is_a_release_of_the_repository_of_the_action()
    {
        using var release = new Release(Program);
        using var host = await release.RunAsync($"release: v0.1.0, sha256: {release.Sum}");
        Assert.Equal(JobEnd.Succeeded, host.Jobs["check"].End);
        Assert.Equal([$"https://example.org/{ProgramRepository.Name}/releases/download/v0.1.0/{Archive}"], Lines(host, "asked"));
    }

    public static TheoryData<string, string, string> Refused { get; } =
        new()
        {
            { "from-source: false", "GOOD", "no release of the program is published yet: write 'from-source: true' for this action" },
            { "release: 'http://example.org/v1'", "GOOD", "'release' is no address: write the tag of a release" },
            { "release: '--config x'", "GOOD", "'release' is no address: write the tag of a release" },
            { $"release: {Address}", "BAD", $"{Archive} is not the one that was meant: its SHA-256 is GOOD and BAD was expected" },
            {
                $"release: {Address}, sha256: BAD",
                "GOOD",
                $"{Archive} is not the one that was meant: its SHA-256 is GOOD and BAD was expected"
            },
            { $"release: {Address}", "GOOD BAD", "no SHA-256 is known of" },
            { $"release: {Address}", "short", "no SHA-256 is known of" },
            { $"release: {Address}", string.Empty, "no SHA-256 is known of" },
            { $"release: {Address}", "-", "SHA256SUMS could not be fetched from the release" },
            { "release: 'https://example.org/nowhere/v2'", "gone", $"{Archive} could not be fetched from the release" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task What_was_not_meant_is_refused_in_one_line_and_never_run(string with, string sums, string told)
    {
        using var release = new Release(Program);
        var bad = new string('b', 64);
        string Filled(string text) =>
            text.Replace("GOOD", release.Sum, StringComparison.Ordinal).Replace("BAD", bad, StringComparison.Ordinal);
        if (sums == "gone")
        {
            release.Remove();
        }

        if (sums != "-")
        {
            release.Say(string.Concat(Filled(sums).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(sum => $"{sum}  {Archive}\n")));
        }

        using var host = await release.RunAsync(Filled(with));
        var check = host.Jobs["check"];
        Assert.Equal((JobEnd.Failed, 1), (check.End, Assert.Single(check.Scripts).Run.Exit));
        var line = Assert.Single(check.Scripts).Run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("::error::" + Filled(told), Assert.Single(line), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(check.Temp, "ohmstead-bin", "ohmstead")));
        Assert.Empty(Lines(host, "ran"));
    }

    [Fact]
    public async Task An_archive_without_the_program_is_refused()
    {
        using var release = new Release(null);
        using var host = await release.RunAsync($"release: {Address}, sha256: {release.Sum}");
        Assert.Equal($"::error::{Archive} holds no program 'ohmstead'\n", Assert.Single(host.Jobs["check"].Scripts).Run.Out);
    }

    // What a script says of a bad input is decided by the script; nothing in an input is a command of it.
    [Fact]
    public async Task An_input_is_a_text_and_never_a_part_of_a_script()
    {
        using var release = new Release(Program);
        using var host = await release.RunAsync(
            $"release: {Address}, sha256: {release.Sum}, records: '$(touch \"$RUNNER_TEMP/ran\")', since: '; touch \"$RUNNER_TEMP/ran\"'"
        );
        Assert.Equal(JobEnd.Failed, host.Jobs["check"].End);
        Assert.Contains(
            "the records lie in no repository that git reads",
            host.Jobs["check"].Script("The records").Out,
            StringComparison.Ordinal
        );
        Assert.Empty(Lines(host, "ran"));
    }

    [Fact]
    public async Task A_checkout_without_the_base_of_a_pull_request_says_what_to_write()
    {
        using var release = new Release(Program);
        using var host = await release.RunAsync($"release: {Address}, sha256: {release.Sum}", isPullRequest: true);
        Assert.Equal(
            (1, "::error::the base of the pull request is not there: write 'fetch-depth: 2' for the checkout\n"),
            (host.Jobs["check"].Script("The records").Exit, host.Jobs["check"].Script("The records").Out)
        );
    }

    private static string[] Lines(WorkflowHost host, string file) =>
        Path.Combine(host.Jobs["check"].Temp, file) is var path && File.Exists(path) ? File.ReadAllLines(path) : [];

    // A folder in place of the release, with an archive of one program.
    private sealed class Release : IDisposable
    {
        private readonly CollectionCopy folder = CollectionCopy.Empty();

        public Release(string? program)
        {
            Assert.SkipWhen(OperatingSystem.IsWindows(), "runs the steps with bash");
            folder.Write("in/" + (program is null ? "letter" : "ohmstead"), program ?? "a letter");
            folder.Write("served/none", string.Empty);
            using var tar = Process.Start(
                "sh",
                ["-c", "chmod +x \"$1\"/in/*; tar -czf \"$1/served/$2\" -C \"$1/in\" .", "sh", folder.Root, Archive]
            );
            tar.WaitForExit();
            Assert.Equal(0, tar.ExitCode);
            Sum = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(folder.At("served/" + Archive))));
        }

        public string Sum { get; }

        public void Say(string sums) => folder.Write("served/SHA256SUMS", sums);

        public void Remove() => File.Delete(folder.At("served/" + Archive));

        public async Task<WorkflowHost> RunAsync(string with, bool isPullRequest = false)
        {
            using var program = ProgramRepository.Make();
            using var collection = ScratchRepository.Empty();
            collection.Write("collection.yaml", "name: x\n");
            collection.Commit("main");
            collection.Write("collection.yaml", "name: y\n");
            collection.Commit("proposed");
            var workflow = WorkflowFile.Parse(
                $$"""
                name: x
                jobs:
                  check:
                    steps:
                      - uses: {{KnownActions.Checkout}}
                      - uses: {{ProgramRepository.Name}}/.github/actions/records@HEAD
                        with: { {{with}} }
                """
            );
#pragma warning disable CA2000 // Handed to the test, which disposes of it.
            return await new WorkflowHost(
                workflow,
                isPullRequest ? HostEvent.PullRequest(collection) : HostEvent.Push(collection),
                ("lighthouse/records", collection),
                (ProgramRepository.Name, program)
            )
                .With("curl", Curl)
                .Set("RELEASED", folder.At("served"))
                .RunAsync();
#pragma warning restore CA2000
        }

        public void Dispose() => folder.Dispose();
    }
}
