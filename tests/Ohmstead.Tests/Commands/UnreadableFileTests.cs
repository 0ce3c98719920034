using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Files that are there and cannot or must not be read: the run goes on without them. A link is a finding; whatever could not be read makes the run incomplete.</summary>
public sealed class UnreadableFileTests
{
    [Fact]
    public void A_linked_record_is_not_followed_and_nothing_of_its_target_is_shown()
    {
        using var outside = CollectionCopy.Empty();
        outside.Write("secret.md", "the keeper's own words");
        using var copy = CollectionCopy.Make();
        File.CreateSymbolicLink(copy.At("boards/SP-0099.md"), outside.At("secret.md"));
        foreach (var path in new[] { copy.Root, copy.At("boards/SP-0099.md") })
        {
            var run = Check(path);
            Assert.Equal(1, run.Exit);
            Assert.Contains("boards/SP-0099.md:1:1: error: this is a symbolic link, which is not followed [symbolic-link]", run.Out, StringComparison.Ordinal);
            Assert.DoesNotContain("keeper", run.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_linked_folder_is_told_once_and_a_circle_of_links_ends()
    {
        using var copy = CollectionCopy.Make();
        Directory.CreateSymbolicLink(copy.At("boards/again"), copy.At("boards"));
        var findings = ShownFinding.FromJson(Check(copy.Root, "--form", "json").Out).Where(finding => finding.Check == "symbolic-link");
        Assert.Equal("boards/again", Assert.Single(findings).Path);
    }

    [Fact]
    public void A_linked_list_of_instruments_is_not_followed()
    {
        using var copy = CollectionCopy.Make();
        File.Move(copy.At("instruments.yaml"), copy.At("elsewhere.yaml"));
        File.CreateSymbolicLink(copy.At("instruments.yaml"), copy.At("elsewhere.yaml"));
        var run = Check(copy.Root, "--form", "json");
        Assert.Equal(1, run.Exit);
        Assert.Contains(ShownFinding.FromJson(run.Out), finding => finding is { Path: "instruments.yaml", Check: "symbolic-link" });
    }

    [Fact]
    public void A_report_copies_nothing_from_behind_a_link_and_a_list_that_lacks_a_record_ends_as_incomplete()
    {
        using var outside = CollectionCopy.Empty();
        outside.Write("secret.md", "---\nboard: SP-0099\ntitle: the keeper's own words\n---\n");
        outside.Write("SP-0098.md", outside.Read("secret.md").Replace("0099", "0098", StringComparison.Ordinal));
        using var copy = CollectionCopy.Make();
        File.CreateSymbolicLink(copy.At("boards/SP-0099.md"), outside.At("secret.md"));
        Directory.CreateSymbolicLink(copy.At("boards/more"), outside.Root);
        using var pages = CollectionCopy.Empty();
        Assert.Equal(1, Run.Of("report", copy.Root, "--to", pages.At("pages"), "--as-of", "2026-11-25").Exit);
        var files = Directory.GetFiles(pages.At("pages"), "*", SearchOption.AllDirectories);
        Assert.DoesNotContain(files, file => file.Contains("SP-009", StringComparison.Ordinal));
        Assert.All(files, file => Assert.DoesNotContain("the keeper's own", File.ReadAllText(file), StringComparison.Ordinal));
        Assert.Equal(3, Run.Of("buy", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public async Task A_pipe_among_the_records_never_keeps_the_run_waiting()
    {
        using var copy = CollectionCopy.Make();
        var run = await Child.ShellAsync("mkfifo boards/SP-0099.md && $ohmstead check .", copy.Root);
        Assert.Equal(1, run.Exit);
        Assert.Contains("boards/SP-0099.md:1:1: error", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_that_is_not_UTF_8_is_told_and_the_other_records_are_read()
    {
        using var copy = CollectionCopy.Make();
        var run = await Child.ShellAsync("odd=$(printf 'boards/SP-\\377.md'); printf x > \"$odd\"; $ohmstead check .; code=$?; rm \"$odd\"; exit $code", copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains("there is no such file, or its name is not UTF-8 [file-unreadable]", run.Out, StringComparison.Ordinal);
        Assert.Contains($" files, {CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_million_million_bytes_is_refused_by_its_size()
    {
        using var copy = CollectionCopy.Make();
        using (var file = File.Create(copy.At("boards/SP-0099.md")))
        {
            file.SetLength(1L << 40);
        }

        var run = Check(copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains("this file cannot be read: it has 1099511627776 bytes, at most 16777216 are read [file-unreadable]", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_with_the_name_of_a_record_is_no_record()
    {
        using var copy = CollectionCopy.Make();
        Directory.CreateDirectory(copy.At("boards/SP-0099.md"));
        Assert.Equal(Check(CollectionCopy.Untouched).Out, Check(copy.Root).Out);
    }

    [Fact]
    public void Five_thousand_mistakes_in_one_file_are_counted_and_fifty_are_shown()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0099.md", "---\nboard: SP-0099\ntitle: Rain counter\nparts:\n" + string.Concat(Enumerable.Range(1, 5_000).Select(i => $"  - {{ ref: C{i}, kind: capacitor }}\n")) + "---\n");
        var run = Check(copy.Root);
        Assert.Equal(1, run.Exit);
        Assert.Equal(50, run.Out.Split('\n').Count(line => line.StartsWith("boards/SP-0099.md:", StringComparison.Ordinal) && line.Contains(": error: ", StringComparison.Ordinal)));
        Assert.Contains("boards/SP-0099.md: 4950 more findings in this file are not shown", run.Out, StringComparison.Ordinal);
        Assert.Contains("5000 errors", run.Out, StringComparison.Ordinal);
    }

    private static Run Check(params string[] words) => Run.Of(["check", .. words, "--as-of", "2026-11-25"]);
}
