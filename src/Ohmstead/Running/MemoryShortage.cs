namespace Ohmstead.Running;

/// <summary>There is not enough memory for a file. It is made before the file is read and filled in when that fails: then there may be no
/// room for anything, not even for words.</summary>
internal sealed class MemoryShortage : IOException
{
    private string file = string.Empty;

    /// <inheritdoc/>
    public override string Message => $"there is not enough memory for {file}";

    /// <summary>The same, about a file.</summary>
    public MemoryShortage For(string path)
    {
        file = path;
        return this;
    }

    /// <summary>Whether it is that. Memory may run out where a type is made, too.</summary>
    public static bool Is(Exception problem) =>
        problem is OutOfMemoryException || (problem is TypeInitializationException { InnerException: { } inner } && Is(inner));
}
