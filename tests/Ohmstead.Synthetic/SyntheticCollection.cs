using System.Text;
using Ohmstead.Synthetic.Files;

namespace Ohmstead.Synthetic;

/// <summary>A whole invented collection of any size. The same plan gives the same bytes on every machine.</summary>
public static class SyntheticCollection
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The text of one board, from 1.</summary>
    public static string Board(CollectionPlan plan, int number) => BoardFile.Write(plan, number);

    /// <summary>Every file with its path from the root of the collection. Texts are made as they are asked for.</summary>
    public static IEnumerable<(string Path, string Text)> Files(CollectionPlan plan)
    {
        yield return ("collection.yaml", CommonFiles.Collection());
        yield return ("instruments.yaml", CommonFiles.Instruments());
        yield return ("stock.yaml", CommonFiles.Stock(plan));
        for (var design = 1; design <= plan.Designs; design++)
        {
            yield return ($"designs/{CollectionPlan.DesignId(design)}.md", DesignFile.Write(plan, design));
        }

        for (var board = 1; board <= plan.Boards; board++)
        {
            yield return ($"boards/{CollectionPlan.BoardId(board)}.md", Board(plan, board));
        }
    }

    /// <summary>Writes the collection into a folder, which is made when it is not there.</summary>
    /// <returns>The number of bytes written.</returns>
    public static long Write(CollectionPlan plan, string folder)
    {
        Directory.CreateDirectory(Path.Combine(folder, "designs"));
        Directory.CreateDirectory(Path.Combine(folder, "boards"));
        var total = 0L;
        foreach (var (path, text) in Files(plan))
        {
            var bytes = Utf8.GetBytes(text);
            File.WriteAllBytes(Path.Combine(folder, path), bytes);
            total += bytes.Length;
        }

        return total;
    }
}
