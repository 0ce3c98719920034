using System.Text;
using Ohmstead.Devices;

namespace Ohmstead.Running;

/// <summary>
/// Where a command prints: results on one stream, everything about the run on the other. UTF-8 whatever the machine's own encoding.
/// </summary>
internal sealed class Terminal(TextWriter output, TextWriter error, bool showsProgress, TextReader? input = null) : IDisposable
{
    /// <summary>How many characters a line of help has where nobody watches, and at most.</summary>
    private const int Usual = 100;

    /// <summary>Results.</summary>
    public TextWriter Out { get; } = output;

    /// <summary>What is said about the run.</summary>
    public TextWriter Error { get; } = error;

    /// <summary>What is typed, line by line.</summary>
    public TextReader In { get; } = input ?? TextReader.Null;

    /// <summary>How many characters a line of help has.</summary>
    public int Width { get; init; } = Usual;

    /// <summary>True when somebody sits there who can be asked.</summary>
    public bool MayAsk { get; init; }

    /// <summary>True when a person watches.</summary>
    public bool ShowsProgress { get; } = showsProgress;

    /// <summary>The colours of results.</summary>
    public Palette Colours { get; init; } = Palette.None;

    /// <summary>The colours of what is said about the run.</summary>
    public Palette ErrorColours { get; init; } = Palette.None;

    /// <summary>Opens the terminal that a person types at, for its keys; null where nobody does, or wants it plain.</summary>
    public Func<TerminalDevice?> OpenDevice { get; init; } = () => null;

    /// <summary>The same terminal with what is told going through other writers; whoever owns this one closes it.</summary>
    public Terminal Through(TextWriter told, TextWriter error) =>
        new(told, error, ShowsProgress, In)
        {
            Width = Width,
            MayAsk = MayAsk,
            Colours = Colours,
            ErrorColours = ErrorColours,
            OpenDevice = OpenDevice,
        };

#pragma warning disable CA2000 // The terminal owns its writers and disposes of them.
    /// <summary>The process's own streams.</summary>
    public static Terminal OfProcess()
    {
        var utf8 = new UTF8Encoding(false);
        var streams = StandardStreams.Keep();
        var output = streams.HasOut ? Output(1) : new ClosedOutput();
        var (isOut, isError) = (streams.HasOut && IsTerminal(1), streams.HasError && IsTerminal(2));
        var isPlain = Environment.GetEnvironmentVariable("OHMSTEAD_PLAIN") is { Length: > 0 };
        var kind = Environment.GetEnvironmentVariable("TERM");
        return new(
            new StreamWriter(output, utf8, 32 << 10) { AutoFlush = false, NewLine = "\n" },
            streams.HasError ? new StreamWriter(Output(2), utf8, 1 << 10) { AutoFlush = true, NewLine = "\n" } : TextWriter.Null,
            isError && Environment.GetEnvironmentVariable("CI") is null or "",
            streams.HasIn ? new StreamReader(Input(), utf8, detectEncodingFromByteOrderMarks: false, 1 << 10) : null
        )
        {
            MayAsk = isError && streams.HasIn && IsTerminal(0),
            Width = isOut && ColumnsOf(1) is { } columns ? Math.Clamp(columns, 40, Usual) : Usual,
            Colours = Palette.For(isOut && !isPlain, Environment.GetEnvironmentVariable),
            ErrorColours = Palette.For(isError && !isPlain, Environment.GetEnvironmentVariable),
            OpenDevice = () => isPlain || !streams.HasIn || !streams.HasOut ? null : TerminalDevice.Open(kind),
        };
    }

    // The framework's console reads a terminal key by key, for which it changes the terminal and leaves its keypad changed. A terminal
    // gives
    // whole lines by itself.
    private static Stream Input() => OperatingSystem.IsWindows() ? Console.OpenStandardInput() : new StandardInput();

    private static Stream Output(int file) =>
        !OperatingSystem.IsWindows() ? new StandardOutput(file)
        : file == 1 ? Console.OpenStandardOutput()
        : Console.OpenStandardError();

    private static bool IsTerminal(int file) =>
        OperatingSystem.IsWindows()
            ? !(
                file == 0 ? Console.IsInputRedirected
                : file == 1 ? Console.IsOutputRedirected
                : Console.IsErrorRedirected
            )
            : TerminalDevice.IsTerminal(file);

    private static int? ColumnsOf(int file) => OperatingSystem.IsWindows() ? Console.WindowWidth : TerminalDevice.SizeOf(file)?.Columns;

#pragma warning restore CA2000

    /// <inheritdoc/>
    public void Dispose()
    {
        Close(Out);
        Close(Error);
        In.Dispose();
    }

    // What could not be written was told when it was flushed; closing must not end the process with a stack trace.
    private static void Close(TextWriter writer)
    {
        try
        {
            writer.Dispose();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException) { }
    }
}
