namespace Ohmstead.Records.Model;

/// <summary>Where a record is seen on the web as it was at a commit: an address in which the commit and the path of the record are left
/// open.</summary>
/// <param name="Pattern">The address as written, with <see cref="Commit"/> and <see cref="Path"/> once each.</param>
public sealed record RecordAddress(string Pattern)
{
    /// <summary>What stands for the commit.</summary>
    public const string Commit = "{commit}";

    /// <summary>What stands for the path of the record below the folder of the collection.</summary>
    public const string Path = "{path}";

    /// <summary>The address of a record.</summary>
    /// <param name="commit">The commit, as it is named.</param>
    /// <param name="path">The path of the record, with forward slashes.</param>
    public string Of(string commit, string path) =>
        Pattern
            .Replace(Commit, Uri.EscapeDataString(commit), StringComparison.Ordinal)
            .Replace(Path, string.Join('/', path.Split('/').Select(Uri.EscapeDataString)), StringComparison.Ordinal);
}
