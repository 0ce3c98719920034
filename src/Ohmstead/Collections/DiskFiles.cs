using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Collections;

/// <summary>The files of a folder of the disk. Symbolic links are not followed.</summary>
/// <param name="root">The folder.</param>
internal sealed class DiskFiles(string root) : IRecordFiles
{
    /// <inheritdoc/>
    public bool Has(string name)
    {
        try
        {
            _ = File.GetAttributes(Path.Combine(root, name));
            return true;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            return false;
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            // It is not known to be missing: to open it says what is wrong.
            return true;
        }
    }

    /// <inheritdoc/>
    public IFileBytes ForWorker(ReadingLimits limits) => new DiskBytes(root, limits);

    /// <inheritdoc/>
    public IPictures Pictures(RunOptions options) => new FolderPictures(root, options.Moved);
}

/// <summary>Opens files of a folder of the disk.</summary>
/// <param name="root">The folder.</param>
/// <param name="limits">How much of a file is read.</param>
internal sealed class DiskBytes(string root, ReadingLimits limits) : IFileBytes
{
    // Most records have some ten kilobytes; a large one need not be kept in mind until the end of the run.
    private const int LargestKept = 256 << 10;

    private byte[] room = new byte[32 << 10];

    /// <inheritdoc/>
    public (ReadOnlyMemory<byte> Bytes, NodeReading? Refused) Open(string path)
    {
        try
        {
            var info = new FileInfo(Path.Combine(root, path));
            // Asked first: a link to a folder, or to nothing, is no file.
            if ((int)info.Attributes != -1 && (info.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None)
            {
                return (default, FileReader.RefusedLink(path));
            }

            if ((int)info.Attributes != -1 && (info.Attributes & FileAttributes.Directory) != FileAttributes.None)
            {
                return (
                    default,
                    FileReader.Refused(
                        path,
                        "it is a folder, or one that cannot be listed",
                        "look at its permissions, or put the file itself there"
                    )
                );
            }

            if (!info.Exists)
            {
                return (
                    default,
                    FileReader.Refused(
                        path,
                        "there is no such file, or its name is not UTF-8",
                        "name the file in UTF-8, and keep it in place during the run"
                    )
                );
            }

            if (info.Length > limits.FileBytes)
            {
                return (default, FileReader.RefusedLarge(path, info.Length, limits));
            }

            // A pipe or a device has no length and is never opened: it could keep the run waiting for ever.
            return info.Length > 0 ? (Bytes(info.FullName), null)
                : IsNoFile(info) ? (default, FileReader.Refused(path, "it is a pipe, a socket or a device", "put an ordinary file there"))
                : (default, null);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (
                default,
                FileReader.Refused(
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
}
