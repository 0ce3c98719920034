using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Binding;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Releases;

/// <summary>The changelog and the program say the same of versions, rules and formats.</summary>
public sealed class ChangelogTests
{
    internal static Changelog Log => Changelog.Parse(File.ReadAllText(ProjectFolder.At("CHANGELOG.md")).ReplaceLineEndings("\n"));

    [Fact]
    public void Its_first_chapter_is_of_this_program()
    {
        var first = Log.Releases[0];
        Assert.Equal(
            (ProgramVersion.Number, JudgingRules.Number, FileBinding.KnownFormat),
            (first.Version.ToString(), first.Rules, first.Format)
        );
    }

    [Fact]
    public void Versions_and_days_go_up_and_rules_only_where_a_verdict_may_change()
    {
        Assert.All(Log.Releases.Skip(1), release => Assert.NotNull(release.Day));
        Assert.Empty(Faults(Log));
    }

    [Theory]
    [InlineData("0.2.0, not released yet\n\nRules 2", "None.", "0.2.0 has other rules and tells no verdict that may change")]
    [InlineData("0.2.0, not released yet\n\nRules 1", "- A limit.", "0.2.0 tells verdicts that may change and has the rules of 0.1.0")]
    [InlineData("0.1.0, not released yet\n\nRules 1", "None.", "0.1.0 does not come after 0.1.0")]
    [InlineData("0.2.0, 2026-11-30\n\nRules 1", "None.", "0.2.0 does not come after 0.1.0")]
    [InlineData("0.2.0, 2026-12-02\n\nRules 2", "- A limit.", null)]
    [InlineData("0.2.0, not released yet\n\nRules 1", "None.", null)]
    public void A_chapter_that_does_not_follow_from_the_one_below_is_seen(string head, string changes, string? fault)
    {
        var log = Changelog.Parse(
            $"# Changelog\n\n## {head}, record format 1.\n\n### Verdicts that may change\n\n{changes}\n\n## 0.1.0, 2026-12-01\n\n"
                + "Rules 1, record format 1.\n\n### Verdicts that may change\n\nNone.\n"
        );
        Assert.Equal(fault, Assert.Single(Faults(log).DefaultIfEmpty(null)));
    }

    [Fact]
    public void Each_release_has_its_folder_of_records()
    {
        // The one that is being made too, so that its promise is not forgotten on the day.
        var kept = ReleasedRecordsTests.Kept.Select(row => Version.Parse(row.Data)).Order();
        Assert.Equal(Log.Releases.Select(release => release.Version).Order(), kept);
    }

    private static IEnumerable<string?> Faults(Changelog log) =>
        log
            .Releases.Zip(log.Releases.Skip(1))
            .Select(pair =>
            {
                var (now, was) = pair;
                return now.Version <= was.Version || (now.Day is not null && now.Day < was.Day)
                        ? $"{now.Version} does not come after {was.Version}"
                    : now.Changes.Count > 0 && now.Rules <= was.Rules
                        ? $"{now.Version} tells verdicts that may change and has the rules of {was.Version}"
                    : now.Changes.Count == 0 && now.Rules != was.Rules
                        ? $"{now.Version} has other rules and tells no verdict that may change"
                    : null;
            })
            .Where(fault => fault is not null);
}
