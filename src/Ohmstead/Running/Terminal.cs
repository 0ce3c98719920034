using System.Text;

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

    /// <summary>True when a person watches.</summary>
    public bool ShowsProgress { get; } = showsProgress;

#pragma warning disable CA2000 // The terminal owns its writers and disposes of them.
    /// <summary>The process's own streams.</summary>
    public static Terminal OfProcess()
    {
        var utf8 = new UTF8Encoding(false);
        var streams = StandardStreams.Keep();
        var output = streams.HasOut ? Console.OpenStandardOutput() : new ClosedOutput();
        return new(
            new StreamWriter(output, utf8, 32 << 10) { AutoFlush = false, NewLine = "\n" },
            streams.HasError
                ? new StreamWriter(Console.OpenStandardError(), utf8, 1 << 10) { AutoFlush = true, NewLine = "\n" }
                : TextWriter.Null,
            streams.HasError && !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("CI") is null or "",
            streams.HasIn ? new StreamReader(Console.OpenStandardInput(), utf8, detectEncodingFromByteOrderMarks: false, 1 << 10) : null
        )
        {
            Width = !streams.HasOut || Console.IsOutputRedirected ? Usual : Math.Clamp(Console.WindowWidth, 40, Usual),
        };
    }

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
