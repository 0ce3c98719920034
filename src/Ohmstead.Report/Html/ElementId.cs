using System.Globalization;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>The id of an element, for links to it. Made from a name of the record, the same for ever, different for different
/// names.</summary>
public sealed record ElementId
{
    private readonly IdPrefix prefix;
    private readonly string name;

    private ElementId(IdPrefix prefix, string name) => (this.prefix, this.name) = (prefix, name);

    /// <summary>The id: a prefix, then letters, digits, <c>-</c>, <c>.</c> and <c>_</c> only.</summary>
    public string Value => prefix.Name + name;

    /// <summary>Whether it stands in an address as it is.</summary>
    internal bool IsAscii => Ascii.IsValid(name);

    /// <summary>The id of the named thing. A character other than a letter, a digit, a hyphen or a dot is written as <c>_2B_</c> (its code
    /// point).</summary>
    /// <param name="prefix">What kind of thing it is.</param>
    /// <param name="name">Its name in the record, such as <c>C12</c> or <c>+15V</c>.</param>
    public static ElementId For(IdPrefix prefix, string name) =>
        new(prefix, name.AsSpan().ContainsAnyExcept(IdPrefix.Plain) ? Encoded(name) : name);

    /// <inheritdoc/>
    public override string ToString() => Value;

    /// <summary>Writes it: nothing in it needs an escape.</summary>
    internal void Write(PageBuffer buffer)
    {
        buffer.Append(prefix.Bytes);
        buffer.AppendUtf16(name);
    }

    private static string Encoded(string name)
    {
        var id = new StringBuilder(name.Length + 8);
        foreach (var rune in name.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '.')
            {
                id.Append(rune.ToString());
            }
            else
            {
                id.Append('_').Append(rune.Value.ToString("X2", CultureInfo.InvariantCulture)).Append('_');
            }
        }

        return id.ToString();
    }
}
