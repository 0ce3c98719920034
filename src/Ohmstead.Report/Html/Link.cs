namespace Ohmstead.Report.Html;

/// <summary>Where a link leads. There are two kinds and no others: inside the pages (<see cref="LocalLink"/>) and out of them
/// (<see cref="ExternalLink"/>).</summary>
public abstract class Link
{
    private protected Link(string encoded) => Encoded = encoded;

    /// <summary>The address, percent-encoded; not yet escaped for HTML.</summary>
    public string Encoded { get; }

    /// <inheritdoc/>
    public override string ToString() => Encoded;
}
