using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>One table on its way to the disk: its CSV file, and beside it its part of the JSON file.</summary>
internal sealed class TableFile : IDisposable
{
    private readonly ReportFolder folder;
    private readonly FileStream csv;
    private readonly FileStream json;

    /// <summary>Starts the table.</summary>
    public TableFile(ReportFolder folder, string name, Shape row)
    {
        this.folder = folder;
        Name = name;
        Row = row;
        csv = folder.Start(DataFiles.CsvName(name));
        json = folder.Start(name + ".json-part");
        csv.Write(DataForm.CsvHead(row));
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>What its rows hold.</summary>
    public Shape Row { get; }

    /// <summary>Adds rows.</summary>
    public void Write(TableBytes rows)
    {
        csv.Write(rows.Csv);
        json.Write(rows.Json);
    }

    /// <summary>Puts the CSV file by and copies the rows into the JSON file, without the comma behind the last.</summary>
    public void Finish(Stream whole)
    {
        folder.Put(DataFiles.CsvName(Name), csv);
        if (json.Length > 0)
        {
            json.SetLength(json.Length - 2);
            json.Position = 0;
            json.CopyTo(whole);
            whole.Write("\n"u8);
        }

        json.Dispose();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        csv.Dispose();
        json.Dispose();
    }
}
