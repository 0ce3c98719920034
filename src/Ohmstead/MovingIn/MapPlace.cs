using Ohmstead.Writing;

namespace Ohmstead.MovingIn;

/// <summary>Where what was said of tables is kept.</summary>
/// <param name="Root">Its folder.</param>
/// <param name="Name">The name of the file.</param>
internal sealed record MapPlace(string Root, string Name)
{
    /// <summary>The name as it is told.</summary>
    public string Told => Name;

    /// <summary>The place that was named, or the usual one.</summary>
    public static MapPlace Find(string? named, string root) =>
        named is null ? new(root, TableMap.FileName) : new(Path.GetDirectoryName(Path.GetFullPath(named))!, Path.GetFileName(named));

    /// <summary>What is kept there, with the text; nothing where there is no file.</summary>
    public (TableMap? Map, string? Text, string? Fault, string? NextStep) Read()
    {
        if (!System.IO.File.Exists(Path.Combine(Root, Name)))
        {
            return (TableMap.None, null, null, null);
        }

        var text = RecordFile.Read(Root, Name);
        var (map, fault, next) = TableMap.Read(Name, text);
        return (map, text, fault, next);
    }

    /// <summary>The file as it will be; none where it says the same already, or where a person wrote into it, which is told.</summary>
    public (string Root, MovedFile? File, string? Told) File(TableMap kept, string? text, TableMap after)
    {
        var now = after.Text();
        return text == now || kept.Text() == now ? (Root, null, null)
            : text is null || text == kept.Text() ? (Root, new MovedFile(Name, text, now, string.Empty), null)
            : (
                Root,
                null,
                $"{Name} has words of its own and stays as it is; what was said this time must be said again, or written into it"
            );
    }
}
