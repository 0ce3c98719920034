using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Ohmstead.Output;

/// <summary>JSON documents as they are printed: plain ASCII, so that nothing in them can be taken for anything but text.</summary>
internal static class JsonText
{
    /// <summary>A document: its version, then whatever it holds, and a line end behind it.</summary>
    /// <param name="isOneLine">True to write it in one line.</param>
    /// <param name="members">Writes what it holds.</param>
    public static string Document(bool isOneLine, Action<Utf8JsonWriter> members)
    {
        using var buffer = new MemoryStream();
        using (
            var json = new Utf8JsonWriter(
                buffer,
                new JsonWriterOptions
                {
                    Indented = !isOneLine,
                    Encoder = JavaScriptEncoder.Default,
                    NewLine = "\n",
                }
            )
        )
        {
            json.WriteStartObject();
            json.WriteNumber("version", 1);
            members(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n";
    }
}
