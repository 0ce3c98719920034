using System.Globalization;

namespace Ohmstead.PartsLists;

/// <summary>Something in a parts list that was not understood.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Column">The column of the table, from 1; 0 where the whole line is meant.</param>
/// <param name="Message">What was found and what was expected: one line in lower case without a full stop.</param>
/// <param name="NextStep">What to write instead, or null when nothing certain can be said.</param>
internal sealed record ListFault(int Line, int Column, string Message, string? NextStep)
{
    /// <summary>The place as a person finds it in a spreadsheet or an editor: line 7, column 3.</summary>
    public string Place =>
        Column == 0
            ? string.Create(CultureInfo.InvariantCulture, $"line {Line}")
            : string.Create(CultureInfo.InvariantCulture, $"line {Line}, column {Column}");
}
