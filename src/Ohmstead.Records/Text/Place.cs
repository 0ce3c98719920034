namespace Ohmstead.Records.Text;

/// <summary>A place in a file of the collection, as an editor shows it.</summary>
/// <param name="Path">The path from the root of the collection, with forward slashes; never absolute.</param>
/// <param name="Line">The line, from 1. LF, CRLF and a lone CR end a line; U+0085, U+2028 and U+2029 do not.</param>
/// <param name="Column">The column, from 1, in Unicode code points.</param>
/// <param name="Length">How many code points are meant on that line; 0 when the place is a point.</param>
public readonly record struct Place(string Path, int Line, int Column, int Length = 0)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Path}:{Line}:{Column}");
}

/// <summary>A place inside one file whose path is known from the context: what nodes and model values carry.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1, in Unicode code points.</param>
/// <param name="Length">How many code points are meant on that line; 0 when the place is a point.</param>
public readonly record struct Spot(int Line, int Column, int Length = 0)
{
    /// <summary>The same place, in a file.</summary>
    public Place In(string path) => new(path, Line, Column, Length);
}
