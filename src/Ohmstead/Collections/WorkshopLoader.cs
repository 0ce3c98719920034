using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Collections;

/// <summary>Loads what boards refer to: collection, instruments, stock and designs.</summary>
internal static class WorkshopLoader
{
    /// <summary>Loads the workshop; findings are added to the list.</summary>
    public static Workshop Load(CollectionFolder folder, FileReader reader, RunOptions options, List<Finding> findings)
    {
        var schemas = new SchemaOpinion(options.IsThorough);
        var collection = Load(folder.Named("collection.yaml"), FileForm.Yaml, FileShapes.Collection, FileBinding.Collection);
        var instruments = Load(
            folder.Named("instruments.yaml"),
            FileForm.Yaml,
            FileShapes.Instruments,
            FileBinding.Instruments,
            options.UpTo is { } then ? then.Instruments : null
        );
        var stock = Load(
            folder.Named("stock.yaml"),
            FileForm.Yaml,
            FileShapes.Stock,
            FileBinding.Stock,
            options.UpTo is { } by ? by.Stock : null
        );
        // Nothing is judged by how meters talk: what is wrong with it is told, and that is all.
        _ = Load(folder.Named("meters.yaml"), FileForm.Yaml, MeterShape.File, MeterBinding.Meters);
        var designs = new List<DesignFile>();
        var unread = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in folder.Designs)
        {
            if (Load(path, FileForm.Markdown, FileShapes.Design, FileBinding.Design) is { } design)
            {
                designs.Add(design);
            }
            else
            {
                unread.Add(Path.GetFileNameWithoutExtension(path));
            }
        }

        // A file that cannot be read has said so; that nothing in it is known need not be said on every board.
        return new Workshop(
            collection ?? CollectionFile.Nameless,
            instruments
                ?? (folder.Named("instruments.yaml") is { } there ? new InstrumentsFile(there, []) { Unread = UnreadNames.All } : null),
            stock
                ?? (
                    folder.Named("stock.yaml") is { } drawer
                        ? new StockFile(drawer, [], [], []) { UnreadLots = UnreadNames.All, UnreadOrders = UnreadNames.All }
                        : null
                ),
            designs
        )
        {
            UnreadDesigns = unread,
            FilesWithErrors = findings
                .Where(finding => finding.Severity == Severity.Error)
                .Select(finding => finding.Place.Path)
                .ToHashSet(StringComparer.Ordinal),
        };

        T? Load<T>(string? path, FileForm form, Shape shape, Func<string, NodeReading, FileReading<T>> bind, Func<T, T>? upTo = null)
            where T : class
        {
            if (path is null)
            {
                return null;
            }

            var text = reader.Read(path, form);
            var read = bind(path, text);
            findings.AddRange(schemas.Add(path, text, shape, read.Findings));
            return read.File is { } file && upTo is not null ? upTo(file) : read.File;
        }
    }
}
