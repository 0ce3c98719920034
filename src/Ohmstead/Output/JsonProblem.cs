namespace Ohmstead.Output;

/// <summary>The JSON document of a run that came to nothing: the exit code and the reason.</summary>
internal static class JsonProblem
{
    /// <summary>The document, with a line end behind it.</summary>
    /// <param name="problem">The reason.</param>
    /// <param name="exitCode">How the run ends.</param>
    /// <param name="isOneLine">True to write it in one line.</param>
    public static string Text(string problem, int exitCode, bool isOneLine) => JsonText.Document(isOneLine, json =>
        {
            json.WriteNumber("exit", exitCode);
            json.WriteString("problem", problem);
        });
}
