namespace Ohmstead.Yaml;

/// <summary>Reads a stretch of a string without copying it.</summary>
internal sealed class SliceReader(string text, int start, int end) : TextReader
{
    private int position = start;

    public override int Peek() => position < end ? text[position] : -1;

    public override int Read() => position < end ? text[position++] : -1;

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read(Span<char> buffer)
    {
        var count = Math.Min(buffer.Length, end - position);
        text.AsSpan(position, count).CopyTo(buffer);
        position += count;
        return count;
    }
}
