using System.CommandLine;

namespace Ohmstead.Commands;

/// <summary>What a person says to have a file replaced that this program did not write.</summary>
internal static class OverOption
{
    /// <summary>Makes the option.</summary>
    public static Option<bool> Make() =>
        new("--over") { Description = "Write over a file that is there and was not written by this program." };
}
