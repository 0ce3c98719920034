namespace Ohmstead.PartsLists;

/// <summary>A table as a program for layouts or spreadsheets writes it.</summary>
/// <param name="Separator">What separates its cells.</param>
/// <param name="Rows">Its rows, blank ones left out; the headings are one of the first.</param>
/// <param name="Faults">Lines that are no rows of a table.</param>
internal sealed record CsvTable(char Separator, IReadOnlyList<CsvRow> Rows, IReadOnlyList<ListFault> Faults);

/// <summary>One row.</summary>
/// <param name="Line">The line of the file on which it begins, from 1.</param>
/// <param name="Cells">Its cells, quotes taken off, blanks at both ends too.</param>
internal sealed record CsvRow(int Line, IReadOnlyList<string> Cells);
