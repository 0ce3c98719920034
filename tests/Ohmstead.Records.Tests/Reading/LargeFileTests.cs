using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>What a record of megabytes left behind is collected at once, before as much again is asked for.</summary>
public sealed class LargeFileTests
{
    [Fact]
    public void What_a_large_file_left_is_collected()
    {
        var left = Nodes();
        LargeFile.GiveBack(2L << 20);
        Assert.False(left.IsAlive);
    }

    // Nothing else knows them when this has returned.
    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.NoInlining)]
    private static WeakReference Nodes() => new(new ScalarNode(default, "120 Ω", ScalarWriting.Plain));
}
