using Ohmstead.Running;

namespace Ohmstead.Disk;

/// <summary>A file that a command was asked to write: new, or one that this program wrote before, or any where the person says
/// so.</summary>
/// <param name="path">Where, as it was asked for.</param>
/// <param name="mark">What stands near the beginning of each such file that this program writes, and of no other.</param>
/// <param name="collection">The collection's folder.</param>
internal sealed class OutputFile(string path, byte[] mark, string collection)
{
    /// <summary>How far into a file its mark may stand.</summary>
    private const int Beginning = 2048;

    private readonly string full = Path.GetFullPath(path);

    /// <summary>Why it is not written, asked before the work; null when it can be.</summary>
    /// <param name="isOver">True to write over whatever file there is.</param>
    /// <exception cref="IOException">A link or something else than a file is in the way, or there is no such folder.</exception>
    public string? Refusal(bool isOver)
    {
        using var folder = FolderOf();
        return Look(folder).Kind == FileKind.Missing || isOver || IsOurs(folder) ? null : Refused;
    }

    /// <summary>Writes it, whole or not at all.</summary>
    /// <exception cref="IOException">It is not written: what has that name is not ours, or the system cannot.</exception>
    public void Write(ReadOnlySpan<byte> bytes, bool isOver)
    {
        using var folder = FolderOf();
        var there = Look(folder);
        if (there.Kind != FileKind.Missing && !isOver && !IsOurs(folder))
        {
            throw new IOException(Refused);
        }

        WholeFile.Write(folder, Path.GetFileName(full), bytes, there);
    }

    private string Refused =>
        $"'{Printable.Escape(path)}' is there, and this program did not write it: give another name, or say --over to write over it";

    private Folder FolderOf() => FolderPath.Open(Path.GetDirectoryName(full) ?? full, collection, makes: false);

    private FileFacts Look(Folder folder) =>
        folder.Look(Path.GetFileName(full)) is { Kind: FileKind.Missing or FileKind.File } entry
            ? entry
            : throw DiskFault.Other(folder.Look(Path.GetFileName(full)).Kind, FileKind.File, full);

    private bool IsOurs(Folder folder)
    {
        using var file = folder.Read(Path.GetFileName(full));
        Span<byte> start = stackalloc byte[Beginning];
        var read = file is null ? 0 : RandomAccess.Read(file, start, 0);
        return start[..read].IndexOf(mark) >= 0;
    }
}
