using System.Collections.Immutable;
using System.Text;
using Ohmstead.Disk;
using Ohmstead.Running;

namespace Ohmstead.Prompt;

/// <summary>The lines of earlier sessions, in a file of the person's own. Without it everything works, and nothing is said.</summary>
/// <param name="path">The file, or null to keep nothing.</param>
/// <param name="collection">The collection's folder, in which it never stands.</param>
internal sealed class HistoryFile(string? path, string collection)
{
    /// <summary>How many lines are kept.</summary>
    public const int Most = 1000;

    private const int Longest = 1 << 20;
    private static readonly UTF8Encoding Utf8 = new(false);

    private readonly string? file = path is null || IsBelow(path, collection) ? null : path;
    private ImmutableArray<string> unsaved = [];

    /// <summary>The lines, the oldest first.</summary>
    public ImmutableArray<string> Lines { get; private set; } = [];

    /// <summary>Where a person's history stands by what their environment says; null where it is turned off or has no place.</summary>
    /// <param name="variable">Gives a variable of the environment.</param>
    /// <remarks>XDG Base Directory Specification 0.8: XDG_STATE_HOME, else ~/.local/state; a relative path counts as none.</remarks>
    public static string? PlaceIn(Func<string, string?> variable)
    {
        if (variable("OHMSTEAD_HISTORY") is "off")
        {
            return null;
        }

        var home = variable("HOME") is { Length: > 0 } said && Path.IsPathRooted(said) ? said : null;
        var state =
            variable("XDG_STATE_HOME") is { Length: > 0 } place && Path.IsPathRooted(place) ? place
            : home is null ? null
            : OperatingSystem.IsMacOS() ? Path.Combine(home, "Library", "Application Support")
            : Path.Combine(home, ".local", "state");
        return state is null ? null : Path.Combine(state, "ohmstead", "bench-history");
    }

    /// <summary>Reads what earlier sessions left.</summary>
    public void Load() => Lines = Read();

    /// <summary>Adds a line. One that begins with a space is kept from the file and from the arrow keys alike.</summary>
    public void Add(string line)
    {
        if (line.Trim().Length > 0 && !line.StartsWith(' ') && (Lines.Length == 0 || Lines[^1] != line))
        {
            Lines = Trimmed(Lines.Add(line));
            unsaved = unsaved.Add(line);
        }
    }

    /// <summary>Writes what was added, behind what other sessions have written meanwhile.</summary>
    public void Save()
    {
        if (file is null || unsaved.Length == 0)
        {
            return;
        }

        var lines = Trimmed([.. Read(), .. unsaved]);
        unsaved = [];
        try
        {
            using var folder = FolderPath.Open(Path.GetDirectoryName(file)!, collection, makes: true);
            var name = Path.GetFileName(file);
            var old = folder.Look(name);
            if (old.Kind is not (FileKind.Missing or FileKind.File))
            {
                return;
            }

            WholeFile.Write(folder, name, Utf8.GetBytes(string.Join('\n', lines) + "\n"), old);
            if (old.Kind == FileKind.Missing && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A history that cannot be kept is no reason to stop at the bench.
        }
    }

    private ImmutableArray<string> Read()
    {
        try
        {
            return file is null || !File.Exists(file) || new FileInfo(file).Length > Longest
                ? []
                : Trimmed([.. File.ReadAllLines(file, Utf8).Where(line => line.Length is > 0 and <= EditLine.Longest && IsPlain(line))]);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool IsPlain(string line) => Printable.Escape(line) == line;

    private static ImmutableArray<string> Trimmed(ImmutableArray<string> lines) => lines.Length <= Most ? lines : lines[^Most..];

    private static bool IsBelow(string path, string folder)
    {
        try
        {
            var root = Path.TrimEndingDirectorySeparator(RealPath.Resolve(Path.GetFullPath(folder)));
            return RealPath.Resolve(Path.GetFullPath(path)).StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Where it leads cannot be told.
            return true;
        }
    }
}
