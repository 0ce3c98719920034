using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Releases;

/// <summary>The promise about records: what a release accepted is accepted by each later program, and judged the same, or the changelog
/// tells what is judged otherwise.</summary>
/// <remarks>
/// A folder beside this class, named after its release, holds an invented collection and <c>judged.json</c>, what it judged of that.
/// While a release is being made, OHMSTEAD_WRITE=1 writes what its program judges. Once it is made, nothing in its folder changes.
/// </remarks>
public sealed class ReleasedRecordsTests
{
    private const string Day = "2026-11-25";

    private static readonly string Folder = ProjectFolder.At("tests/Ohmstead.History.Tests/Releases");

    public static TheoryData<string> Kept =>
        [.. Directory.GetDirectories(Folder).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Kept))]
    public void What_a_release_accepted_is_accepted(string version)
    {
        var run = Run.Of("check", Path.Combine(Folder, version), "--thorough", "--as-of", Day);
        Assert.True(run.Exit == 0, run.Out + run.Error);
    }

    [Theory]
    [MemberData(nameof(Kept))]
    public void What_a_release_judged_is_judged_the_same_or_the_changelog_tells_it(string version)
    {
        var folder = Path.Combine(Folder, version);
        var judged = Path.Combine(folder, "judged.json");
        var log = ChangelogTests.Log;
        if (
            Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1"
            && log.Releases.Single(release => release.Version == Version.Parse(version)).Day is null
        )
        {
            Assert.Equal(0, Run.Of("check", folder, "--keep", judged, "--as-of", Day).Exit);
        }

        Assert.Empty(Untold(folder, judged, log.ToldSince(Version.Parse(version), version)));
    }

    // The test above passes where nothing is compared, too: here is what it must see.
    [Fact]
    public void A_verdict_that_changes_without_a_word_is_seen_and_one_that_is_told_is_not()
    {
        using var copy = CollectionCopy.Empty();
        var folder = Path.Combine(Folder, "0.1.0");
        var text = File.ReadAllText(Path.Combine(folder, "judged.json"));
        var changed = text.Replace("\"outcome\": \"outside\"", "\"outcome\": \"inside\"", StringComparison.Ordinal)
            .Replace("\"state\": \"fit to run\"", "\"state\": \"proof due\"", StringComparison.Ordinal);
        copy.Write("judged.json", changed);
        const string Log = """
            # Changelog

            ## 0.2.0, not released yet

            Rules 2, record format 1.

            ### Verdicts that may change

            - An invented change. <!-- 0.1.0: CL-001, CL-001 C1, CL-002 C4, CL-002 R1, CL-002 K1 -->
            - Another one, of other records. <!-- 0.0.9: CL-003 R1 -->

            ## 0.1.0, 2026-12-01

            Rules 1, record format 1.

            ### Verdicts that may change

            None. <!-- 0.1.0: CL-004 C1 -->

            """;
        var told = Changelog.Parse(Log).ToldSince(new(0, 1, 0), "0.1.0");
        Assert.Equal(
            ["CL-003 R1: was inside, now outside", "CL-004 C1: was inside, now outside"],
            Untold(folder, copy.At("judged.json"), told)
        );
        Assert.Contains("CL-001: was proof due, now fit to run", Untold(folder, copy.At("judged.json"), new HashSet<string>()));
    }

    // What is judged otherwise now and by no line told: the board and the place, and how.
    private static string[] Untold(string folder, string judged, IReadOnlySet<string> told)
    {
        var run = Run.Of("changes", "--judged", judged, "--in", folder, "--form", "json");
        // Records that were touched would be left out, and their verdicts with them.
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        using var changes = JsonDocument.Parse(run.Out);
        return
        [
            .. changes
                .RootElement.GetProperty("boards")
                .EnumerateArray()
                .SelectMany(board =>
                    board
                        .GetProperty("changes")
                        .EnumerateArray()
                        .Select(change =>
                            (
                                At: $"{board.GetProperty("board").GetString()} {change.GetProperty("place").GetString()}".Trim(),
                                Was: change.GetProperty("was").GetString() ?? "nothing",
                                Now: change.GetProperty("now").GetString() ?? "nothing"
                            )
                        )
                )
                .Where(change => !told.Contains(change.At))
                .Select(change => $"{change.At}: was {change.Was}, now {change.Now}"),
        ];
    }
}
