using Ohmstead.Output;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>A table on its way to the disk, as CSV.</summary>
internal sealed class CsvFile : IDisposable
{
    private readonly ReportFolder folder;
    private readonly FileStream csv;

    /// <summary>Starts the table.</summary>
    public CsvFile(ReportFolder folder, string name, Shape row)
    {
        this.folder = folder;
        Name = name;
        Row = row;
        csv = folder.Start(DataFiles.CsvName(name));
        using var head = new PageBuffer(256);
        CsvRows.Begin(head);
        DataForm.CsvHead(head, row);
        csv.Write(head.Written);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>What its rows hold.</summary>
    public Shape Row { get; }

    /// <summary>Adds rows.</summary>
    public void Write(Drafted rows) => rows.CopyTo(folder, csv.Write);

    /// <summary>Puts the file by.</summary>
    public void Finish() => folder.Put(DataFiles.CsvName(Name), csv);

    /// <inheritdoc/>
    public void Dispose() => csv.Dispose();
}
