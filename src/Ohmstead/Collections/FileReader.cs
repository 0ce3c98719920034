using System.Text;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Collections;

/// <summary>Reads files of a collection into nodes; what cannot be opened or is too large comes back as a finding.</summary>
internal sealed class FileReader(CollectionFolder folder, INodeReader nodes, RunOptions options)
{
    // Most records have some ten kilobytes; a large one need not be kept in mind until the end of the run.
    private const int LargestKept = 256 << 10;

    private byte[] room = new byte[32 << 10];
    private long last;

    /// <summary>The check under which unreadable files are reported; they make a run incomplete.</summary>
    public const string Unreadable = "file-unreadable";

    /// <summary>The check under which links are reported; somebody put them there, so that is a finding like any other.</summary>
    public const string Link = "symbolic-link";

    /// <summary>Whether a finding says that a file was not looked into: then it is not opened for an excerpt either, and a list may lack
    /// what it holds.</summary>
    public static bool IsPassedOver(Finding finding) => finding.Check is Unreadable or Link;

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

        var (bytes, refused) = Open(path);
        last = bytes.Length;
        return refused ?? nodes.Read(path, bytes, form, limits);
    }

    /// <summary>
    /// Whether something holds for the bytes of a file. For one that cannot be read it does not: nothing of it is known to anybody.
    /// </summary>
    public bool Holds(string path, Func<ReadOnlySpan<byte>, bool> question) => Open(path) is (var bytes, null) && question(bytes.Span);

    private (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path)
    {
        try
        {
            var info = new FileInfo(folder.Full(path));
            // Asked first: a link to a folder, or to nothing, is no file.
            if ((int)info.Attributes != -1 && (info.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None)
            {
                return (
                    default,
                    Failed(
                        new(
                            Link,
                            Severity.Error,
                            new Place(path, 1, 1),
                            "this is a symbolic link, which is not followed",
                            "put the file or the folder itself there"
                        )
                    )
                );
            }

            if ((int)info.Attributes != -1 && (info.Attributes & FileAttributes.Directory) != FileAttributes.None)
            {
                return (
                    default,
                    Refused(path, "it is a folder, or one that cannot be listed", "look at its permissions, or put the file itself there")
                );
            }

            if (!info.Exists)
            {
                return (
                    default,
                    Refused(
                        path,
                        "there is no such file, or its name is not UTF-8",
                        "name the file in UTF-8, and keep it in place during the run"
                    )
                );
            }

            if (info.Length > options.Limits.FileBytes)
            {
                return (
                    default,
                    Refused(
                        path,
                        $"it has {info.Length} bytes, at most {options.Limits.FileBytes} are read",
                        "split the record, or take out what does not belong in it"
                    )
                );
            }

            // A pipe or a device has no length and is never opened: it could keep the run waiting for ever.
            return info.Length > 0 ? (Bytes(info.FullName), null)
                : IsNoFile(info) ? (default, Refused(path, "it is a pipe, a socket or a device", "put an ordinary file there"))
                : (default, null);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (
                default,
                Refused(
                    path,
                    problem is UnauthorizedAccessException ? "permission is denied" : "the system could not read it",
                    "look at the file's permissions and its disk"
                )
            );
        }
    }

    private static bool IsNoFile(FileInfo info)
    {
        using var above = Disk.Folder.Open(info.DirectoryName!);
        return above.Look(info.Name).Kind == Disk.FileKind.Other;
    }

    // The bytes are good until the next file is read: whoever reads them makes text of them at once.
    private ReadOnlyMemory<byte> Bytes(string file)
    {
        using var handle = File.OpenHandle(file);
        var length = (int)Math.Min(RandomAccess.GetLength(handle), Array.MaxLength);
        var bytes =
            length <= room.Length ? room
            : length > LargestKept ? new byte[length]
            : room = new byte[length];
        var read = 0;
        while (read < length && RandomAccess.Read(handle, bytes.AsSpan(read, length - read), read) is > 0 and var more)
        {
            read += more;
        }

        return bytes.AsMemory(0, read);
    }

    private static NodeReading Refused(string path, string why, string next) =>
        Failed(new(Unreadable, Severity.Error, new Place(path, 1, 1), $"this file cannot be read: {why}", next));

    private static NodeReading Failed(Finding finding) => new(null, string.Empty, 1, [finding]);
}
