using Ohmstead.Electronics;

namespace Ohmstead.Starting;

/// <summary>A release from which workflows have the program, instead of building it.</summary>
/// <param name="Tag">Its tag, v and three numbers.</param>
/// <param name="Sha256">The SHA-256 of its archive for the machine of the workflows, in small hexadecimal digits; null where the sums
/// beside the archive are believed.</param>
internal sealed record ProgramRelease(string Tag, string? Sha256)
{
    /// <summary>The archive that the workflows take: they run on such a machine.</summary>
    public const string Archive = "ohmstead-linux-x64.tar.gz";

    private const int Digits = 64;

    /// <summary>What the action of the program is told, within the braces of a line of a workflow.</summary>
    public string AsInputs => Sha256 is null ? $"release: {Tag}" : $"release: {Tag}, sha256: {Sha256}";

    /// <summary>Reads a tag and a sum. Both become a line of a workflow, so only letters that mean nothing there are taken.</summary>
    public static Outcome<ProgramRelease> Read(string tag, string? sha256) =>
        tag is not ['v', .. var numbers]
        || numbers.Split('.') is not { Length: 3 } parts
        || !parts.All(part => part.Length is > 0 and < 10 && part.All(char.IsAsciiDigit))
            ? Outcome<ProgramRelease>.Refused($"'{tag}' is no tag of a release; write --release v1.2.3")
        : sha256 is not null && (sha256.Length != Digits || !sha256.All(char.IsAsciiHexDigitLower))
            ? Outcome<ProgramRelease>.Refused(
                $"'{sha256}' is no SHA-256; write the sixty-four digits that stand in SHA256SUMS in front of {Archive}"
            )
        : Outcome<ProgramRelease>.From(new(tag, sha256));
}
