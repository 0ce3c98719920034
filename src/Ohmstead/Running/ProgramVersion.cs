namespace Ohmstead.Running;

/// <summary>Which program this is: what a release writes into it, and nothing that the machine would have to be asked.</summary>
internal static class ProgramVersion
{
    /// <summary>The version, as Directory.Build.props has it.</summary>
    public static string Number => typeof(ProgramVersion).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";

    /// <summary>The commit that it was built from, in full; null where the build was not told, as in any that no release makes.</summary>
    public static string? Commit
    {
        get
        {
            using var stream = typeof(ProgramVersion).Assembly.GetManifestResourceStream("commit");
            if (stream is null)
            {
                return null;
            }

            using var reader = new StreamReader(stream);
            return reader.ReadToEnd().Trim();
        }
    }
}
