using System.Globalization;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>The id of an element, for links to it. Made from a name of the record, the same for ever, different for different names.</summary>
public sealed record ElementId
{
    private ElementId(string value) => Value = value;

    /// <summary>The id: a prefix, then letters, digits, <c>-</c>, <c>.</c> and <c>_</c> only.</summary>
    public string Value { get; }

    /// <summary>The id of the named thing. A character other than a letter, a digit, a hyphen or a dot is written as <c>_2B_</c> (its code point).</summary>
    /// <param name="prefix">What kind of thing it is.</param>
    /// <param name="name">Its name in the record, such as <c>C12</c> or <c>+15V</c>.</param>
    public static ElementId Of(IdPrefix prefix, string name)
    {
        var id = new StringBuilder(prefix.Name, prefix.Name.Length + name.Length);
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

        return new ElementId(id.ToString());
    }

    /// <inheritdoc/>
    public override string ToString() => Value;
}
