using System.Text;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Collections;

/// <summary>Reads files of a collection into nodes; what cannot be opened or is too large comes back as a finding.</summary>
internal sealed class FileReader(CollectionFolder folder, INodeReader nodes, RunOptions options)
{
    private readonly IFileBytes files = folder.Files.ForWorker(options.Limits);
    private long last;

    /// <summary>The check under which unreadable files are reported; they make a run incomplete.</summary>
    public const string Unreadable = "file-unreadable";

    /// <summary>The check under which links are reported; somebody put them there, so that is a finding like any other.</summary>
    public const string Link = "symbolic-link";

    /// <summary>Whether a finding says that a file was not looked into: then it is not opened for an excerpt either, and a list may lack
    /// what it holds.</summary>
    public static bool IsPassedOver(Finding finding) => finding.Check is Unreadable or Link;

    /// <summary>What is said of a file that was not looked into.</summary>
    public static NodeReading Refused(string path, string why, string next) =>
        Failed(new(Unreadable, Severity.Error, new Place(path, 1, 1), $"this file cannot be read: {why}", next));

    /// <summary>What is said of a symbolic link in the place of a record.</summary>
    public static NodeReading RefusedLink(string path) =>
        Failed(
            new(
                Link,
                Severity.Error,
                new Place(path, 1, 1),
                "this is a symbolic link, which is not followed",
                "put the file or the folder itself there"
            )
        );

    /// <summary>What is said of a file that is larger than any that is read.</summary>
    public static NodeReading RefusedLarge(string path, long length, ReadingLimits limits) =>
        Refused(
            path,
            $"it has {length} bytes, at most {limits.FileBytes} are read",
            "split the record, or take out what does not belong in it"
        );

    private static NodeReading Failed(Finding finding) => new(null, string.Empty, 1, [finding]);

    /// <summary>Gives back what the file that was read last took until it became a record, where that was much.</summary>
    public void GiveBack() => LargeFile.GiveBack(last);

    /// <summary>Reads one file.</summary>
    public NodeReading Read(string path, FileForm form)
    {
        var limits = options.Limits;
        if (options.Instead.TryGetValue(path, out var other))
        {
            return nodes.Read(path, Encoding.UTF8.GetBytes(other), form, limits);
        }

        var (bytes, refused) = files.Open(path);
        last = bytes.Length;
        return refused ?? nodes.Read(path, bytes, form, limits);
    }

    /// <summary>
    /// Whether something holds for the bytes of a file. For one that cannot be read it does not: nothing of it is known to anybody.
    /// </summary>
    public bool Holds(string path, Func<ReadOnlySpan<byte>, bool> question) =>
        files.Open(path) is (var bytes, null) && question(bytes.Span);
}
