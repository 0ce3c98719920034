using System.Diagnostics;

namespace Ohmstead.Running;

/// <summary>Runs something whose failures are told in words and by the exit code, never by an exception.</summary>
internal static class Guarded
{
    /// <summary>Runs it.</summary>
    /// <param name="error">Where failures are told.</param>
    /// <param name="run">What is run; it gives the exit code.</param>
    /// <returns>The exit code, and whether the run was cut short.</returns>
    public static (int Exit, bool IsCut) Run(TextWriter error, Func<int> run)
    {
        try
        {
            return (run(), false);
        }
        // A filter is asked before anything is given back: where memory ran out, it must make no words.
        catch (Exception problem) when (IsFromOutside(problem))
        {
            Tell(error, $"could not read or write: {Printable.Escape(Words(problem))}");
            return (ExitCode.Incomplete, true);
        }
        // The last resort: whatever escapes is a bug, told in three lines and never as a stack trace of somebody's record.
#pragma warning disable CA1031
        catch (Exception bug)
#pragma warning restore CA1031
        {
            Tell(error, "this is a bug of the program, your records were not touched");
            Tell(error, $"  {bug.GetType().Name} in {PlaceOf(bug)}: {bug.InnerException?.GetType().Name} {PlaceOf(bug.InnerException)}");
            Tell(error, "  please report it together with the command you gave");
            return (ExitCode.Bug, true);
        }
    }

    // Where too few files may be open, it is the making of a type that fails.
    private static bool IsFromOutside(Exception problem) =>
        problem is IOException or UnauthorizedAccessException or OutOfMemoryException
        || (problem is TypeInitializationException { InnerException: { } inner } && IsFromOutside(inner));

    private static string Words(Exception problem) =>
        problem switch
        {
            _ when MemoryShortage.Is(problem) => "there is not enough memory",
            TypeInitializationException { InnerException: { } inner } => Words(inner),
            _ => problem.Message,
        };

    // The name of the method alone, which stays known where the program was linked ahead of time.
    private static string? PlaceOf(Exception? problem) =>
        problem is not null && new StackTrace(problem).GetFrame(0) is { } frame && DiagnosticMethodInfo.Create(frame) is { } method
            ? $"{method.DeclaringTypeName?.Split('.')[^1]}.{method.Name}"
            : null;

    /// <summary>Tells a line, if anybody is left to hear it.</summary>
    public static void Tell(TextWriter error, string line)
    {
        try
        {
            error.WriteLine(line);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nobody is left to tell; the exit code still says it.
        }
    }
}
