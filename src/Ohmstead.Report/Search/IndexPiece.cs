using System.Globalization;
using System.Text;
using System.Text.Json;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>Writes one list into files of a size that a phone reads at once, each a script of one assignment: pages opened from disk may
/// load a script and nothing else.</summary>
/// <param name="files">Where to.</param>
/// <param name="kind">The first letter of the files.</param>
/// <param name="separator">What stands between two entries.</param>
/// <param name="most">How many bytes of entries a file has before the next begins.</param>
internal sealed class IndexPiece(IReportFiles files, string kind, string separator, int most) : IDisposable
{
    private readonly PageBuffer entries = new();
    private readonly PageBuffer file = new();
    private int count;

    /// <summary>Whether what comes again is written once; lists of words gain little by it.</summary>
    public bool IsPacked { get; init; }

    /// <summary>Where an entry is written.</summary>
    public PageBuffer Buffer => entries;

    /// <summary>Begins an entry, in a new file where this one is full.</summary>
    /// <returns>Whether it is the first of its file.</returns>
    public bool Begin()
    {
        if (entries.Written.Length > 0 && entries.Written.Length < most)
        {
            entries.AppendUtf16(separator);
            return false;
        }

        Finish();
        count++;
        return true;
    }

    /// <summary>Ends the last file.</summary>
    public void Finish()
    {
        if (entries.Written.Length > 0)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{kind}{count}");
            Start(file, name);
            var text = Encoding.UTF8.GetString(entries.Written);
            var packed = IsPacked ? PackedText.Of(text) : PackedText.AsIs(text);
            Write(packed);
            file.Append(";\n"u8);
            files.Put($"search/{name}.js", file.Written);
            entries.Clear();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        entries.Dispose();
        file.Dispose();
    }

    /// <summary>Writes the head of a file that holds one value.</summary>
    internal static void Start(PageBuffer buffer, string name)
    {
        buffer.Clear();
        buffer.Append("(globalThis.ohmsteadPieces ??= {})."u8);
        buffer.AppendUtf16(name);
        buffer.Append(" = "u8);
    }

    // The text first, then what its signs stand for.
    private void Write(PackedText packed)
    {
        using var json = new Utf8JsonWriter(file, Layout);
        json.WriteStartArray();
        json.WriteStringValue(packed.Text);
        foreach (var piece in packed.Pieces)
        {
            json.WriteStringValue(piece);
        }

        json.WriteEndArray();
    }

    // What is packed was escaped already, but for the quotes and strokes of its own escapes.
    private static readonly JsonWriterOptions Layout = new()
    {
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };
}
