namespace Ohmstead.Machine.Tests.Faults;

/// <summary>The reports that tests of faults begin and end with, made once for all of them.</summary>
public sealed class FaultyReports : IDisposable
{
    private readonly TwoReports plain = new();
    private readonly TwoReports with = new();

    /// <inheritdoc/>
    public void Dispose()
    {
        plain.Dispose();
        with.Dispose();
    }

    /// <summary>Without anything else among the pages but one file.</summary>
    internal Task<TwoReports> PlainAsync() => plain.MadeAsync(null);

    /// <summary>With a file of somebody else in a folder of theirs.</summary>
    internal Task<TwoReports> WithAsync(string foreign) => with.MadeAsync(foreign);
}
