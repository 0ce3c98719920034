namespace Ohmstead.Prompt;

/// <summary>Where the lines of a session come from.</summary>
internal interface ILines : IDisposable
{
    /// <summary>The next line; null when there will be none.</summary>
    /// <param name="prompt">What stands in front of it.</param>
    string? Read(PromptText prompt);

    /// <summary>The answer to a question. What was typed before it was asked answers nothing, where a person types.</summary>
    /// <param name="prompt">The question.</param>
    /// <returns>The answer; empty where it was given up, null when there will be none.</returns>
    string? Ask(PromptText prompt);

    /// <summary>Whether a person wants to wait no longer. Other keys that they touched meanwhile are dropped.</summary>
    bool IsStopped();
}
