using System.Text;

namespace Ohmstead.Bench;

/// <summary>Passes on what a command tells of its words, as they are typed at the bench: the bench says the board itself, and a line that
/// says it too would not be read.</summary>
/// <param name="inner">Where it is told; whoever opened it closes it.</param>
/// <param name="command">The command.</param>
/// <param name="board">The number of the board.</param>
internal sealed class BoardlessWriter(TextWriter inner, string command, string board) : TextWriter
{
    private readonly StringBuilder line = new();

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        line.Append(value);
        if (value == '\n')
        {
            Pass();
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Pass();
        base.Dispose(disposing);
    }

    private void Pass()
    {
        line.Replace($"write {command} {board} ", $"write {command} ")
            .Replace("takes BOARD ", "takes ")
            .Replace("order is BOARD ", "order is ");
        inner.Write(line.ToString());
        line.Clear();
    }
}
