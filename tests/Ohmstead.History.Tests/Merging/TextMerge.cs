using System.Diagnostics;

namespace Ohmstead.History.Tests.Merging;

/// <summary>The merge of lines that Git does by itself, for comparison.</summary>
internal static class TextMerge
{
    /// <summary>Whether it ends in a conflict.</summary>
    public static bool Conflicts(string before, string one, string other)
    {
        var folder = Directory.CreateTempSubdirectory("ohmstead-text-").FullName;
        try
        {
            string[] names = ["one", "before", "other"];
            foreach (var (name, text) in names.Zip([one, before, other]))
            {
                File.WriteAllText(Path.Combine(folder, name), text);
            }

            using var git = Process.Start(
                new ProcessStartInfo("git", ["merge-file", "-p", .. names])
                {
                    WorkingDirectory = folder,
                    RedirectStandardOutput = true,
                    UseShellExecute = false,
                }
            )!;
            git.StandardOutput.ReadToEnd();
            git.WaitForExit();
            return git.ExitCode != 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
