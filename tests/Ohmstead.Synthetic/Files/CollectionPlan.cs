using Ohmstead.Synthetic.Text;

namespace Ohmstead.Synthetic.Files;

/// <summary>What is in a collection of a given size: how many of each thing, and how they are named.</summary>
/// <param name="Boards">How many boards; at least 1.</param>
/// <param name="Seed">The seed of every invented value.</param>
public sealed record CollectionPlan(int Boards, ulong Seed = 1)
{
    private const int BoardsPerBatch = 250;
    private const int BoardsPerDesign = 200;

    /// <summary>How many batches of lots and orders there are.</summary>
    public int Batches => 1 + ((Boards - 1) / BoardsPerBatch);

    /// <summary>How many designs there are.</summary>
    public int Designs => 1 + ((Boards - 1) / BoardsPerDesign);

    /// <summary>The batch of a board, from 1.</summary>
    public static int BatchOf(int board) => 1 + ((board - 1) / BoardsPerBatch);

    /// <summary>The number of a board, from 1, as records write it.</summary>
    public static string BoardId(int board) => "SP-" + Figures.Padded(board, 5);

    /// <summary>The name of a design, from 1.</summary>
    public static string DesignId(int design) => "servo-" + Figures.Padded(design, 3);

    /// <summary>The lot of a template in a batch.</summary>
    public static string LotId(int template, int batch) => $"L-{Figures.Padded(batch, 3)}-{Figures.Padded(template + 1, 2)}";

    /// <summary>The order of a batch.</summary>
    public static string OrderId(int batch) => "PO-" + Figures.Padded(batch, 3);
}
