namespace Ohmstead.Records.Nodes;

/// <summary>What a file of megabytes asks for beside what every file does.</summary>
public static class LargeFile
{
    private const long Bytes = 1L << 20;

    /// <summary>Gives memory back at a point where most of what a large file took is of no more use.</summary>
    /// <remarks>
    /// Text, nodes and what was judged of one large record lie one behind the other, and the collector looks for the first only when as
    /// much again was asked for. A record of 8 MB with 170,000 readings took 272 MB without this and 216 MB with it, in no more time. What
    /// is free is given back to the system, or what comes next would take as much again beside it.
    /// </remarks>
    /// <param name="bytes">How large the file is.</param>
    public static void GiveBack(long bytes)
    {
        if (bytes > Bytes)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }
}
