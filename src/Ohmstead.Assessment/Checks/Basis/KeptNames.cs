using Ohmstead.Records.Binding;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Names of files that not every system can keep: told in the same way wherever they stand.</summary>
internal static class KeptNames
{
    /// <summary>What to do.</summary>
    internal const string NextStep = "give it a name of letters, digits and - + . _ that is none of a device, and mend what names it";

    /// <summary>Why some system cannot keep a file of a path, or null.</summary>
    internal static string? FaultIn(string path)
    {
        foreach (var name in path.AsSpan().Split('/'))
        {
            if (NameRules.FileFault(path.AsSpan()[name]) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    /// <summary>What is wrong.</summary>
    internal static string Say(string path, string fault) => $"some systems cannot keep '{path}': {fault}";
}
