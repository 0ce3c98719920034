using System.IO.Compression;
using System.Security;
using System.Text;

namespace Ohmstead.Tests.Support;

/// <summary>A workbook as a spreadsheet saves it, with as little in it as a reader of them needs.</summary>
internal static class Workbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";

    /// <summary>Writes one.</summary>
    /// <param name="path">Where.</param>
    /// <param name="sheets">The sheets: the name and the rows, each cell as <see cref="Text"/>, <see cref="Figure"/>, <see cref="Day"/> or
    /// <see cref="Wrong"/> makes it.</param>
    public static void Write(string path, params (string Name, string[][] Rows)[] sheets)
    {
        using var file = File.Create(path);
        using var packed = new ZipArchive(file, ZipArchiveMode.Create);
        Add(
            packed,
            "[Content_Types].xml",
            $"<Types xmlns=\"{Package}/content-types\"><Default Extension=\"rels\" "
                + "ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" "
                + "ContentType=\"application/xml\"/></Types>"
        );
        Add(packed, "_rels/.rels", Relations(("officeDocument", "xl/workbook.xml")));
        Add(
            packed,
            "xl/workbook.xml",
            $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><sheets>"
                + string.Concat(sheets.Select((sheet, at) => $"<sheet name=\"{sheet.Name}\" sheetId=\"{at + 1}\" r:id=\"rId{at + 1}\"/>"))
                + "</sheets></workbook>"
        );
        Add(
            packed,
            "xl/_rels/workbook.xml.rels",
            Relations([.. sheets.Select((_, at) => ("worksheet", $"worksheets/sheet{at + 1}.xml")), ("styles", "styles.xml")])
        );
        Add(
            packed,
            "xl/styles.xml",
            $"<styleSheet xmlns=\"{Main}\"><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" "
                + "applyNumberFormat=\"1\"/></cellXfs></styleSheet>"
        );
        foreach (var (at, sheet) in sheets.Index())
        {
            var rows = sheet.Rows.Select(
                (row, line) =>
                    $"<row r=\"{line + 1}\">"
                    + string.Concat(
                        row.Select((cell, column) => cell.Replace("@", $"{(char)('A' + column)}{line + 1}", StringComparison.Ordinal))
                    )
                    + "</row>"
            );
            Add(
                packed,
                $"xl/worksheets/sheet{at + 1}.xml",
                $"<worksheet xmlns=\"{Main}\"><sheetData>{string.Concat(rows)}</sheetData></worksheet>"
            );
        }
    }

    /// <summary>Cells of text.</summary>
    public static string[] Text(params string[] cells) =>
        [.. cells.Select(cell => $"<c r=\"@\" t=\"inlineStr\"><is><t>{SecurityElement.Escape(cell)}</t></is></c>")];

    /// <summary>A figure as it is kept: all the digits that a binary number has.</summary>
    public static string Figure(string kept) => $"<c r=\"@\"><v>{kept}</v></c>";

    /// <summary>A day: how many there were since 1899-12-30.</summary>
    public static string Day(int count) => $"<c r=\"@\" s=\"1\"><v>{count}</v></c>";

    /// <summary>A cell that shows an error.</summary>
    public static string Wrong() => "<c r=\"@\" t=\"e\"><v>#N/A</v></c>";

    private static string Relations(params (string Kind, string Target)[] relations) =>
        $"<Relationships xmlns=\"{Package}/relationships\">"
        + string.Concat(
            relations.Select((one, at) => $"<Relationship Id=\"rId{at + 1}\" Type=\"{Office}/{one.Kind}\" Target=\"{one.Target}\"/>")
        )
        + "</Relationships>";

    private static void Add(ZipArchive packed, string name, string xml)
    {
        using var entry = packed.CreateEntry(name).Open();
        entry.Write(Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + xml));
    }
}
