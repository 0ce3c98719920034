using System.Text;

namespace Ohmstead.Running;

/// <summary>Lets text through to a terminal with everything hidden written out, line ends apart. For text that this program does not
/// compose itself.</summary>
internal sealed class PrintableWriter(TextWriter inner) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        if (value == '\n')
        {
            inner.Write(value);
        }
        else
        {
            inner.Write(Printable.Escape(value.ToString()));
        }
    }

    /// <inheritdoc/>
    public override void Write(string? value)
    {
        foreach (var c in value ?? string.Empty)
        {
            Write(c);
        }
    }
}
