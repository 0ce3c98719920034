using Ohmstead.Electronics;

namespace Ohmstead.Starting;

/// <summary>Where workflows have the program from: a repository on the host, and what of it.</summary>
/// <param name="Repository">owner/name.</param>
/// <param name="Revision">A commit, which stays what it is; or a tag or a branch, which somebody may move.</param>
internal sealed record ProgramSource(string Repository, string Revision)
{
    /// <summary>The branch that is taken where nothing else is said.</summary>
    public const string UsualRevision = "main";

    /// <summary>Whether it is a commit, in full.</summary>
    public bool IsCommit => Revision.Length is 40 or 64 && Revision.All(char.IsAsciiHexDigitLower);

    /// <summary>Reads OWNER/NAME or OWNER/NAME@REVISION. Both become a line of a workflow, so only letters that mean nothing there are
    /// taken.</summary>
    public static Outcome<ProgramSource> Read(string text)
    {
        var (repository, revision) = text.IndexOf('@', StringComparison.Ordinal) is var at and >= 0
            ? (text[..at], text[(at + 1)..])
            : (text, UsualRevision);
        return !IsRepository(repository)
                ? Outcome<ProgramSource>.Refused($"'{text}' names no repository; write --program OWNER/NAME@COMMIT")
            : !IsRevision(revision)
                ? Outcome<ProgramSource>.Refused($"'{revision}' is no name of a commit; write --program {repository}@COMMIT")
            : Outcome<ProgramSource>.From(new(repository, revision));
    }

    private static bool IsRepository(string text) =>
        text.Split('/') is [{ Length: > 0 } owner, { Length: > 0 } name]
        && (owner + name).All(IsPlain)
        && char.IsAsciiLetterOrDigit(owner[0]);

    private static bool IsRevision(string text) =>
        text.Split('/').All(part => part.Length > 0 && part.All(IsPlain)) && char.IsAsciiLetterOrDigit(text[0]);

    private static bool IsPlain(char letter) => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.';
}
