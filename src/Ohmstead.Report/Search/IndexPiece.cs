using System.Globalization;
using System.Text.Json;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>Writes one list into files of a size that a phone reads at once, each a script of one assignment: pages opened from disk may load
/// a script and nothing else.</summary>
/// <param name="files">Where to.</param>
/// <param name="kind">The first letter of the files.</param>
/// <param name="most">How many bytes a file has before the next begins.</param>
internal sealed class IndexPiece(IReportFiles files, string kind, int most) : IDisposable
{
    private readonly PageBuffer buffer = new();
    private int count;
    private bool isOpen;

    /// <summary>Begins an entry, in a new file where this one is full.</summary>
    /// <returns>Whether it is the first of its file.</returns>
    public bool Begin()
    {
        if (isOpen && buffer.Written.Length < most)
        {
            buffer.Append(",\n"u8);
            return false;
        }

        Finish();
        Start(buffer, string.Create(CultureInfo.InvariantCulture, $"{kind}{++count}"));
        buffer.Append("[\n"u8);
        isOpen = true;
        return true;
    }

    /// <summary>Where the entry is written.</summary>
    public PageBuffer Buffer => buffer;

    /// <summary>Ends the last file.</summary>
    public void Finish()
    {
        if (isOpen)
        {
            buffer.Append("\n];\n"u8);
            files.Put(string.Create(CultureInfo.InvariantCulture, $"search/{kind}{count}.js"), buffer.Written);
            isOpen = false;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => buffer.Dispose();

    /// <summary>Writes the head of a file that holds one value.</summary>
    internal static void Start(PageBuffer buffer, string name)
    {
        buffer.Clear();
        buffer.Append("(globalThis.ohmsteadPieces ??= {})."u8);
        buffer.AppendUtf16(name);
        buffer.Append(" = "u8);
    }

    /// <summary>Writes a text of the entry.</summary>
    internal void Text(string text)
    {
        using var json = new Utf8JsonWriter(buffer, KeptPage.Layout);
        json.WriteStringValue(text);
    }
}
