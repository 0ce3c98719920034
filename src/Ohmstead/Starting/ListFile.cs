using Ohmstead.Electronics;
using Ohmstead.Records.Decoding;

namespace Ohmstead.Starting;

/// <summary>Reads the file of a parts list as text.</summary>
internal static class ListFile
{
    private const long Most = 16 << 20;

    /// <summary>The text without a byte order mark, or why there is none.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static Outcome<string> Read(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            return Outcome<string>.Refused($"there is no file '{path}'");
        }

        if (file.Length > Most)
        {
            return Outcome<string>.Refused($"{path} has {file.Length} bytes, at most {Most} are read");
        }

        var read = SourceDecoder.Decode(path, file.Length == 0 ? [] : File.ReadAllBytes(path));
        return read is { Source: { } source }
            ? string.IsNullOrWhiteSpace(source.Text)
                ? Outcome<string>.Refused($"{path} is empty")
                : Outcome<string>.From(source.Text)
            : Outcome<string>.Refused(
                $"{read.Finding!.Place}: {read.Finding.Message}" + (read.Finding.NextStep is { } next ? $"; {next}" : string.Empty)
            );
    }
}
