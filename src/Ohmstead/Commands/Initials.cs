namespace Ohmstead.Commands;

/// <summary>Who works.</summary>
internal static class Initials
{
    /// <summary>What was said, else what the environment says, else null.</summary>
    public static string? Clean(string? said) =>
        said ?? (Environment.GetEnvironmentVariable("OHMSTEAD_BY") is { Length: > 0 } usual ? usual : null);
}
