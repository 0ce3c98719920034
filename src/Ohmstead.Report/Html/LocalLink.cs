using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A link to a file of the report, to a place in one, or to a place in the same page. Only these can be loaded as picture or style
/// sheet.</summary>
public sealed class LocalLink : Link
{
    private LocalLink(string encoded)
        : base(encoded) { }

    /// <summary>A link to a place in the same page.</summary>
    public static LocalLink ToFragment(ElementId id) => new(PercentEncoding.Encode(new StringBuilder("#"), id.Value).ToString());

    /// <summary>A link to the rows of a table that hold some words. Where no script runs it leads to the page of the table.</summary>
    /// <param name="path">The page, from the root of the report.</param>
    /// <param name="table">What the table is called.</param>
    /// <param name="words">The words.</param>
    public static LocalLink ToRows(string path, string table, string words)
    {
        var encoded = new StringBuilder(ToFile(path).Encoded).Append('#');
        foreach (var c in table)
        {
            encoded.Append(char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-');
        }

        return new(PercentEncoding.Encode(encoded.Append(".only="), words).ToString());
    }

    /// <summary>A link to a file of the report.</summary>
    /// <param name="path">The path from the root of the report with forward slashes. Every character of a name is allowed, each name is
    /// percent-encoded.</param>
    /// <param name="levelsUp">How many folders below the root the linking page stands.</param>
    /// <param name="id">A place in the file, or null.</param>
    /// <exception cref="ArgumentException">The path has an empty name, <c>.</c> or <c>..</c> in it: such a path was to be refused
    /// before.</exception>
    public static LocalLink ToFile(string path, int levelsUp = 0, ElementId? id = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(levelsUp);
        var encoded = new StringBuilder();
        for (var level = 0; level < levelsUp; level++)
        {
            encoded.Append("../");
        }

        var names = path.Split('/');
        for (var i = 0; i < names.Length; i++)
        {
            if (names[i] is "" or "." or "..")
            {
                throw new ArgumentException($"The path '{path}' does not name a file below the root.", nameof(path));
            }

            PercentEncoding.Encode(i == 0 ? encoded : encoded.Append('/'), names[i]);
        }

        return new LocalLink((id is null ? encoded : PercentEncoding.Encode(encoded.Append('#'), id.Value)).ToString());
    }
}
