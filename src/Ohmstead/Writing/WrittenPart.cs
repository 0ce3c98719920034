using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Writing;

/// <summary>What sits in a place of a board, in the words in which it is written there: so that it need not be typed again where it goes
/// to.</summary>
internal static class WrittenPart
{
    /// <summary>The part as one line of YAML, as <c>new_part</c> says it; null where it is written in no list.</summary>
    /// <param name="board">The board, with its collection.</param>
    /// <param name="place">The place on it.</param>
    /// <param name="run">How records are read.</param>
    public static string? Find(FoundBoard board, string place, RunOptions run)
    {
        if (board.Board.Place(place) is not { } there)
        {
            return null;
        }

        var reader = new FileReader(board.Beside, NodeReaders.ForWorker(0), run);
        return there.FittedBy switch
        {
            { Lot: { } lot } => In(reader, "stock.yaml", FileForm.Yaml, "lots", "lot", lot.Value),
            { } => null,
            null => In(reader, there.Part.FromDesign ?? board.Board.Board.Path, FileForm.Markdown, "parts", PartShape.Ref.Name, place),
        };
    }

    private static string? In(FileReader reader, string path, FileForm form, string list, string key, string name)
    {
        var items = (reader.Read(path, form).Root?.ValueOf(list) as SequenceNode)?.Items ?? [];
        var item = items.OfType<MappingNode>().FirstOrDefault(one => one.ValueOf(key) is ScalarNode scalar && scalar.Text == name);
        return item is null
            ? null
            : FlowText.Mapping(
                PartShape.NewPart.Keys.Select(known =>
                    (known.Name, item.ValueOf(known.Name) is ScalarNode { IsNothing: false } value ? value.Text : null)
                )
            );
    }
}
