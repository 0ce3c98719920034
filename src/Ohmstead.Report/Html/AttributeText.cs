using System.Buffers;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>How the value of an attribute is written: HTML asks for quotes only where a character in it could end it, and pages have more
/// than a thousand attributes.</summary>
/// <remarks>
/// A bare value ends at a blank or at <c>&gt;</c>; it may not be empty, nor hold a quote, a backtick, <c>=</c>, <c>&lt;</c> or
/// <c>&gt;</c> (HTML, 13.1.2.3). Only letters, digits and a few signs of ASCII are left bare; everything else is quoted and escaped.
/// </remarks>
internal static class AttributeText
{
    private static readonly SearchValues<char> Bare = SearchValues.Create(
        "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-._~:/?#@!$()*+,;%"
    );

    private static readonly SearchValues<char> Numbers = SearchValues.Create("0123456789.-+ ,MmLlHhVvZzAaCcSsQqTt");

    /// <summary>Whether a value holds numbers of a drawing and the letters of its strokes, and nothing else.</summary>
    public static bool IsNumbers(ReadOnlySpan<char> value) => !value.IsEmpty && !value.ContainsAnyExcept(Numbers);

    /// <summary>Whether a value needs no quotes.</summary>
    public static bool IsBare(ReadOnlySpan<char> value) => !value.IsEmpty && !value.ContainsAnyExcept(Bare);

    /// <summary>The bytes of an attribute of the program, with a blank before it; an empty value is left out.</summary>
    public static byte[] Whole(string name, string value) =>
        Encoding.ASCII.GetBytes(
            value.Length == 0 ? $" {name}"
            : IsBare(value) ? $" {name}={value}"
            : $" {name}=\"{value}\""
        );
}
