namespace Ohmstead.Disk;

/// <summary>Where a path leads once every symbolic link on it is followed, so that two paths can be compared.</summary>
internal static class RealPath
{
    /// <summary>The absolute path without links. Parts that do not exist yet stay as they are written.</summary>
    /// <exception cref="IOException">Links run in a circle.</exception>
    public static string Resolve(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        if (Path.GetDirectoryName(full) is not { } above)
        {
            return full;
        }

        var here = Path.Combine(Resolve(above), Path.GetFileName(full));
        var entry = new DirectoryInfo(here);
        return entry.LinkTarget is null ? here : Resolve(entry.ResolveLinkTarget(returnFinalTarget: true)!.FullName);
    }
}
