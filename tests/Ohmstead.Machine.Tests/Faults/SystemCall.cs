using System.Globalization;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A call of the system about the watched folder, as it was written down.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Function">Its name.</param>
/// <param name="Path">What it is about; of an open file the path under which the system knows it.</param>
/// <param name="Second">The other path of a rename or a link, else empty.</param>
/// <param name="Error">The number of its error; 0 when it was done.</param>
/// <param name="IsFault">Whether the fault of this run was put here.</param>
internal sealed record SystemCall(CallKind Kind, string Function, string Path, string Second, int Error, bool IsFault)
{
    /// <summary>The calls of a journal, in the order in which they were made.</summary>
    public static IReadOnlyList<SystemCall> Read(string journal) => [.. File.ReadLines(journal).Select(Of)];

    /// <summary>One line of a trace: what was done to what, from the folder on.</summary>
    public string In(string folder)
    {
        var words = $"{SystemFault.NameOf(Kind)} {System.IO.Path.GetRelativePath(folder, Path)}";
        return Second.Length == 0 ? words : $"{words} -> {System.IO.Path.GetRelativePath(folder, Second)}";
    }

    private static SystemCall Of(string line)
    {
        var cells = line.TrimStart('!').Split('\t');
        var kind = Enum.Parse<CallKind>(cells[0], ignoreCase: true);
        return new(kind, cells[1], cells[2], cells[3], int.Parse(cells[4], CultureInfo.InvariantCulture), line.StartsWith('!'));
    }
}
