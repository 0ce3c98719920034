using System.Text;

namespace Ohmstead.Output;

/// <summary>Writes through, and keeps what was written.</summary>
/// <param name="inner">Where it is written.</param>
internal sealed class OverheardWriter(TextWriter inner) : TextWriter
{
    private readonly StringBuilder heard = new();

    /// <summary>All that was written so far.</summary>
    public string Heard => heard.ToString();

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        inner.Write(value);
        heard.Append(value);
    }

    /// <inheritdoc/>
    public override void Write(string? value)
    {
        inner.Write(value);
        heard.Append(value);
    }

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        inner.WriteLine(value);
        heard.Append(value).Append('\n');
    }

    /// <inheritdoc/>
    public override void WriteLine() => WriteLine(string.Empty);

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();
}
