using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>The demo collection before and after an edit, and what is told of the difference.</summary>
internal sealed class TwoStates : IDisposable
{
    private const string Today = "2026-11-25";

    /// <summary>The collection as it was.</summary>
    public CollectionCopy Was { get; } = CollectionCopy.Make();

    /// <summary>The collection as it is.</summary>
    public CollectionCopy Now { get; } = CollectionCopy.Make();

    /// <summary>Puts one text in place of another in a file of the later state. The first must stand there.</summary>
    public void Edit(string path, string was, string now)
    {
        var text = Now.Read(path);
        Assert.Contains(was, text, StringComparison.Ordinal);
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Now.Write(path, text[..at] + now + text[(at + was.Length)..]);
    }

    /// <summary>Enters something into the later state by a command.</summary>
    public void Do(params string[] words)
    {
        var run = Run.Of([.. words, "--in", Now.Root, "--as-of", Today]);
        Assert.True(run.Exit == 0, run.Error);
    }

    /// <summary>Makes the earlier state what the later one is by now.</summary>
    public void Keep()
    {
        foreach (var path in Directory.EnumerateFiles(Now.Root, "*", SearchOption.AllDirectories))
        {
            File.Copy(path, Path.Combine(Was.Root, Path.GetRelativePath(Now.Root, path)), overwrite: true);
        }
    }

    /// <summary>What is told of the difference, for people.</summary>
    public string Text(params string[] more) => Told([Was.Root, Now.Root, .. more]).Out;

    /// <summary>What is told of the way back.</summary>
    public string Back() => Told([Now.Root, Was.Root]).Out;

    /// <summary>What is told of the difference, for programs.</summary>
    public JsonElement Json(params string[] more) =>
        JsonDocument.Parse(Told([Was.Root, Now.Root, "--form", "json", .. more]).Out).RootElement.Clone();

    public void Dispose()
    {
        Was.Dispose();
        Now.Dispose();
    }

    private static Run Told(string[] words)
    {
        string[] day = words.Contains("--as-of") ? [] : ["--as-of", Today];
        var run = Run.Of(["changes", .. words, .. day]);
        Assert.True(run.Exit == 0, run.Error);
        return run;
    }
}
