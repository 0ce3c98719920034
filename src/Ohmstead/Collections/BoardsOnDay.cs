using Ohmstead.Records.Binding;
using Ohmstead.Records.Days;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>The boards of a collection that had come by a day.</summary>
internal static class BoardsOnDay
{
    /// <summary>The collection without the boards that came later. One whose record cannot be read stays, and says so.</summary>
    /// <param name="files">The collection.</param>
    /// <param name="options">How records are read.</param>
    /// <param name="day">The day.</param>
    public static CollectionFolder Find(CollectionFolder files, RunOptions options, RecordsUpTo day)
    {
        var reader = new FileReader(files, NodeReaders.ForWorker(0), options);
        return files.Having([
            .. files.Boards.Where(path =>
                FileBinding.Board(path, reader.Read(path, FileForm.Markdown)).File is not { } board || day.Board(board) is not null
            ),
        ]);
    }
}
