using System.Runtime.InteropServices;

namespace Ohmstead.Disk;

/// <summary>Why something was not done on the disk, in words that name the path and the way on.</summary>
internal static class DiskFault
{
    /// <summary>The system's own reason.</summary>
    /// <param name="error">Its number.</param>
    /// <param name="path">What it was about.</param>
    public static IOException From(int error, string path) => new($"{Marshal.GetPInvokeErrorMessage(error)}: '{path}'", error);

    /// <summary>A link where something was to be written, read or taken away.</summary>
    public static IOException Link(string path) =>
        new(
            $"'{path}' is a symbolic link, and nothing is done through one: put the file or the folder itself there, or take the link away"
        );

    /// <summary>Something else than was to be there.</summary>
    /// <param name="kind">What stands there.</param>
    /// <param name="wanted">What should.</param>
    /// <param name="path">Where.</param>
    public static IOException Other(FileKind kind, FileKind wanted, string path) =>
        kind switch
        {
            FileKind.Link => Link(path),
            FileKind.Missing => new($"there is no '{path}'; it may have been taken away during the run"),
            FileKind.Folder => new($"'{path}' is a folder where a file is wanted; give it another name"),
            FileKind.File when wanted == FileKind.Folder => new($"'{path}' is a file where a folder is wanted; give it another name"),
            FileKind.File or FileKind.Other => new(
                $"'{path}' is a pipe, a socket or a device; put {(wanted == FileKind.Folder ? "a folder" : "an ordinary file")} there"
            ),
        };
}
