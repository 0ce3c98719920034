namespace Ohmstead.Running;

/// <summary>The few colours of the program. They only point at words that say the same; where nobody watches there are none.</summary>
/// <param name="isOn">Whether anything is coloured.</param>
/// <remarks>The sixteen colours of ECMA-48, which every person's terminal has made readable for them.</remarks>
internal sealed class Palette(bool isOn)
{
    private const string End = "\e[0m";

    /// <summary>No colours.</summary>
    public static Palette None { get; } = new(false);

    /// <summary>The colours of a stream.</summary>
    /// <param name="isTerminal">Whether it is a terminal.</param>
    /// <param name="variable">Gives a variable of the environment: NO_COLOR with anything in it turns colours off, and so does a terminal
    /// that has none.</param>
    public static Palette For(bool isTerminal, Func<string, string?> variable) =>
        isTerminal && variable("NO_COLOR") is null or "" && (OperatingSystem.IsWindows() || variable("TERM") is not (null or "" or "dumb"))
            ? new(isTerminal)
            : None;

    /// <summary>What is outside, refused or wrong.</summary>
    public string Wrong(string text) => Paint(text, "1;31");

    /// <summary>What is doubtful, or only a warning.</summary>
    public string Doubtful(string text) => Paint(text, "33");

    /// <summary>What is as it should be.</summary>
    public string Right(string text) => Paint(text, "32");

    /// <summary>What is asked, and headings.</summary>
    public string Strong(string text) => Paint(text, "1");

    /// <summary>What is sent before text that is asked, and behind it; nothing where there are no colours.</summary>
    public (string Begin, string End) OfPrompt => isOn ? ("\e[1m", End) : (string.Empty, string.Empty);

    private string Paint(string text, string colour) => isOn && text.Length > 0 ? $"\e[{colour}m{text}{End}" : text;
}
