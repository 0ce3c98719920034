using System.Globalization;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>Text of numbers and names, the same in every culture.</summary>
internal static class Invariant
{
    public static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The lower case of a name in ASCII, such as a host.</summary>
    public static string LowerCase(string ascii) =>
        string.Create(ascii.Length, ascii, static (target, source) => Ascii.ToLower(source, target, out _));
}
