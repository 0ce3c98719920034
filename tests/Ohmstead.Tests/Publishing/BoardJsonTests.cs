using System.Text;
using Ohmstead.Publishing;
using Ohmstead.Report.Html;

namespace Ohmstead.Tests.Publishing;

/// <summary>What a worker writes of a board says nothing of the boards that it wrote before.</summary>
public sealed class BoardJsonTests
{
    [Fact]
    public void A_second_board_is_written_as_if_it_were_the_first()
    {
        using var buffer = new PageBuffer();
        using var json = new BoardJson(buffer);
        var alone = Written(json, buffer, "SP-0002", rows: 0);

        var before = Written(json, buffer, "SP-0001", rows: 3);
        Assert.Contains("\"shared\":{\n", before, StringComparison.Ordinal);

        Assert.Equal(alone, Written(json, buffer, "SP-0002", rows: 0));
        Assert.Equal(before, Written(json, buffer, "SP-0001", rows: 3));
    }

    private static string Written(BoardJson json, PageBuffer buffer, string board, int rows)
    {
        json.Begin(board);
        foreach (var table in DataShapes.OfOneBoard)
        {
            json.Start(table);
            for (var row = 0; row < rows; row++)
            {
                json.Take([.. table.Keys.Select(_ => "1")]);
            }

            json.End();
        }

        json.Finish();
        return Encoding.UTF8.GetString(buffer.Written);
    }
}
