using System.Security.Cryptography;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Properties;

/// <summary>The same records give the same bytes, wherever they lie, whoever looks and from where.</summary>
public sealed class SameReportTests
{
    [Fact]
    public async Task The_report_is_the_same_bytes_from_a_clone_at_another_path_and_from_another_working_folder()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        using var other = CollectionCopy.Empty();
        CollectionCopy.Put(other.At("a clone, with spaces/é/records"));
        foreach (var file in Directory.EnumerateFiles(other.Root, "*", SearchOption.AllDirectories))
        {
            // A clone has the times of its making.
            File.SetLastWriteTimeUtc(file, new DateTime(2001, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        }

        var clone = other.At("a clone, with spaces/é/records");
        await Ended(Child.ShellAsync("$ohmstead report . --to pages", copy.Root, ("LC_ALL", "C")));
        await Ended(
            Child.ShellAsync(
                "$ohmstead report 'a clone, with spaces/é/records' --to elsewhere",
                other.Root,
                ("LC_ALL", "ar_SA.UTF-8"),
                ("LANG", "th_TH.UTF-8"),
                ("TZ", "Asia/Kathmandu")
            )
        );
        await Ended(
            Child.ShellAsync(
                $"cd / && $ohmstead report '{clone}' --to '{other.At("third")}' --workers 3",
                other.Root,
                ("HOME", "/nowhere"),
                ("TZ", "Pacific/Kiritimati")
            )
        );
        var pages = Digests(copy.At("pages"));
        Assert.InRange(pages.Count, 50, int.MaxValue);
        Assert.Equal(pages, Digests(other.At("elsewhere")));
        Assert.Equal(pages, Digests(other.At("third")));
    }

    private static async Task Ended(Task<Run> run) => Assert.Equal((0, string.Empty), ((await run).Exit, (await run).Error));

    private static SortedDictionary<string, string> Digests(string root) =>
        new(
            Directory
                .EnumerateFiles(root, "*", SearchOption.AllDirectories)
                .ToDictionary(
                    file => Path.GetRelativePath(root, file),
                    file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))
                ),
            StringComparer.Ordinal
        );
}
