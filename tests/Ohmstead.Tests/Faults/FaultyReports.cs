namespace Ohmstead.Tests.Faults;

/// <summary>The reports that tests of faults begin and end with, made once for all of them.</summary>
public sealed class FaultyReports : IDisposable
{
    private TwoReports? plain;
    private TwoReports? with;

    /// <inheritdoc/>
    public void Dispose()
    {
        plain?.Dispose();
        with?.Dispose();
    }

    /// <summary>Without anything else among the pages but one file.</summary>
    internal async Task<TwoReports> PlainAsync() => plain ??= await TwoReports.MakeAsync(null);

    /// <summary>With a file of somebody else in a folder of theirs.</summary>
    internal async Task<TwoReports> WithAsync(string foreign) => with ??= await TwoReports.MakeAsync(foreign);
}
