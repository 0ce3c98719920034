using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Records.Days;
using Ohmstead.Running;

#pragma warning disable CA2000 // What is opened is handed on to the command, which disposes of it.
namespace Ohmstead.Commands;

/// <summary>A collection as it was: the files, and how they are read and judged.</summary>
/// <param name="Files">The files.</param>
/// <param name="Run">How they are read and judged.</param>
/// <param name="Known">What the repository knew, where that was asked for.</param>
internal sealed record PastCollection(CollectionFolder Files, RunOptions Run, KnownState? Known) : IDisposable
{
    /// <inheritdoc/>
    public void Dispose() => Known?.Dispose();
}

/// <summary>
/// Two clocks: what had happened at the bench by a day, and what the repository knew at the end of a day. Each is an option of its own, and
/// together they tell what was known then of what had been done by then.
/// </summary>
/// <param name="shared">The options beside them.</param>
internal sealed class PastOptions(SharedOptions shared)
{
    /// <summary>The day of the bench.</summary>
    public Option<DateOnly?> On { get; } =
        new("--on")
        {
            Description = "The bench as it was on this day, which is today then: whatever is dated later has not happened.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };

    /// <summary>The day of the repository.</summary>
    public Option<DateOnly?> Known { get; } =
        new("--known")
        {
            Description = "The records as the repository had them at the end of this day (UTC), judged by the rules of this program.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };

    /// <summary>Opens the collection as it is asked for, or gives null with a message and an exit code.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="folder">The collection's folder, or a file of it.</param>
    /// <param name="error">Where it is told.</param>
    /// <param name="open">Opens the files as they lie.</param>
    public (PastCollection? State, int Exit) Open(ParseResult parsed, string folder, TextWriter error, Func<CollectionFolder?> open)
    {
        var (on, known) = (parsed.GetValue(On), parsed.GetValue(Known));
        if (on is not null && parsed.GetValue(shared.AsOf) is not null)
        {
            error.WriteLine("--on says which day it is; leave --as-of out");
            return (null, ExitCode.Usage);
        }

        if (
            (on ?? (parsed.GetValue(shared.AsOf) is null ? known : null)) is var day
            && shared.Read(parsed, error, folder, day) is not { } run
        )
        {
            return (null, ExitCode.Usage);
        }

        KnownState? state = null;
        if (known is { } end)
        {
            if (!Directory.Exists(folder))
            {
                error.WriteLine("--known looks at a whole collection: give its folder");
                return (null, ExitCode.Usage);
            }

            if (!KnownState.Open(folder, end).Is(out state, out var why))
            {
                error.WriteLine(Printable.Escape(why));
                return (null, ExitCode.Incomplete);
            }
        }

        if ((state?.Files ?? open()) is not { } files)
        {
            return (null, ExitCode.Usage);
        }

        if (on is not { } upTo)
        {
            return (new(files, run, state), ExitCode.Clean);
        }

        run = run with { UpTo = new RecordsUpTo(upTo) };
        return (new(BoardsOnDay.Find(files, run, run.UpTo), run, state), ExitCode.Clean);
    }
}
