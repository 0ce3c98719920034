using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Options that several commands share.</summary>
internal sealed class SharedOptions
{
    public Option<DateOnly?> AsOf { get; } =
        new("--as-of")
        {
            Description =
                "The day to take for today, such as 2026-11-25. Otherwise that of SOURCE_DATE_EPOCH or the clock: in the collection's "
                + "time zone, else the machine's.",
            HelpName = "DATE",
            CustomParser = Day,
        };

    public Option<string> Folder { get; } =
        new("--in")
        {
            HelpName = "FOLDER",
            Description = "The collection's folder.",
            DefaultValueFactory = _ => UsualFolder(),
        };

    /// <summary>The folder of a collection when none is given: this one when it is one, else records when it is there.</summary>
    public static string UsualFolder() =>
        !File.Exists("collection.yaml") && !Directory.Exists("boards") && Directory.Exists("records") ? "records" : ".";

    public Option<bool> Thorough { get; } = new("--thorough") { Description = "Also hold every record against the JSON schemas." };

    public Option<int> Workers { get; } =
        new("--workers")
        {
            Validators = { AtLeastOne },
            Description = "How many workers read side by side; the result does not depend on it.",
            DefaultValueFactory = _ => Math.Clamp(Environment.ProcessorCount, 1, 8),
        };

    /// <summary>The options as a run over the collection in a folder takes them, or null with a message when the day cannot be
    /// known.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="error">Told when the day is another than in UTC.</param>
    /// <param name="folder">The folder, or any file of the collection; where not given, the option's.</param>
    /// <param name="writes">True for what is written under today's day: where the zone is not known, nothing is.</param>
    public RunOptions? Read(ParseResult parsed, TextWriter error, string? folder = null, bool writes = false) =>
        Read(parsed, error, folder, parsed.GetValue(AsOf), writes);

    /// <summary>The same, on a day that another option says; null where none does.</summary>
    public RunOptions? Read(ParseResult parsed, TextWriter error, string? folder, DateOnly? said, bool writes = false)
    {
        if ((said ?? parsed.GetValue(AsOf)) is { } day)
        {
            return Read(parsed, day);
        }

        // A build that is to give the same twice says its moment, and does not ask where it runs.
        var epoch = Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH");
        var seconds = 0L;
        if (
            epoch is not null
            && !(long.TryParse(epoch, NumberStyles.None, CultureInfo.InvariantCulture, out seconds) && seconds < 253_402_214_400)
        )
        {
            error.WriteLine("SOURCE_DATE_EPOCH is no count of seconds since 1970; unset it or give --as-of");
            return null;
        }

        var moment = epoch is null ? DateTimeOffset.UtcNow : DateTimeOffset.FromUnixTimeSeconds(seconds);
        var at = folder ?? parsed.GetValue(Folder) ?? ".";
        var zone = BenchDay.CollectionIn(File.Exists(at) ? CollectionFolder.RootOf(at) : at)?.TimeZone?.Value;
        var today = BenchDay.At(moment, zone, epoch is null ? TimeZoneInfo.Local : TimeZoneInfo.Utc);
        if (today.Told is { } told)
        {
            error.WriteLine(Printable.Escape(told));
        }

        if (today.IsKnown || !writes)
        {
            return Read(parsed, today.Day);
        }

        error.WriteLine("nothing was written, since its day is not known: mend time_zone in collection.yaml, or give --as-of");
        return null;
    }

    /// <summary>The collection in a folder, or null with a message when there is no such folder.</summary>
    public static CollectionFolder? Open(string folder, TextWriter error)
    {
        if (Directory.Exists(folder))
        {
            var files = CollectionFolder.Open(folder);
            if (NamedFiles.Inside(files) is not { } above)
            {
                return files;
            }

            error.WriteLine(Printable.Escape(above));
            return null;
        }

        error.WriteLine(Printable.Escape(NamedFiles.Missing(folder, "folder")));
        return null;
    }

    /// <summary>The collection in a folder, or null with a message when there is no such folder or no board in it.</summary>
    public static CollectionFolder? OpenBoards(string folder, TextWriter error)
    {
        if (Open(folder, error) is not { } files)
        {
            return null;
        }

        if (files.Boards.Count > 0)
        {
            return files;
        }

        error.WriteLine(Printable.Escape(NamedFiles.NoBoards(files)));
        return null;
    }

    private static void AtLeastOne(OptionResult result)
    {
        if (
            result.Tokens.Count > 0
            && int.TryParse(result.Tokens[0].Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count)
            && count < 1
        )
        {
            result.AddError($"--workers {count.ToString(CultureInfo.InvariantCulture)} leaves nobody to read; give 1 or more");
        }
    }

    private RunOptions Read(ParseResult parsed, DateOnly today) =>
        new(today, parsed.GetValue(Thorough), Math.Clamp(parsed.GetValue(Workers), 1, 64), ReadingLimits.Usual)
        {
            Typed = CommandKeys.Of(parsed),
        };

    /// <summary>Reads a day of the command line.</summary>
    public static DateOnly? Day(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (DateText.ParseDay(text).Is(out var day, out var fault))
        {
            return day;
        }

        if (text.Equals("today", StringComparison.OrdinalIgnoreCase) && result.Parent is OptionResult { Option.Name: "--on" })
        {
            result.AddError("'today' is no date; leave --on out when it was today");
            return null;
        }

        result.AddError(fault.NextStep is { } next ? $"{fault.Message}; {next}" : fault.Message);
        return null;
    }
}
