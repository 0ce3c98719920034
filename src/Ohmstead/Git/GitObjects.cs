using System.Diagnostics;
using System.Globalization;
using System.Text;
using Ohmstead.Electronics;

#pragma warning disable CA2000 // The process is handed on to whoever holds it, and ended with it.
namespace Ohmstead.Git;

/// <summary>Reads contents by their names out of one process of git, one after the other; several threads may ask.</summary>
/// <remarks>
/// Contents are asked for by name and never by path: a path may hold a line end, and what is asked for is told by lines. Where a clone does
/// not hold a content, and whoever it came from cannot be asked, git ends; another process goes on with the next.
/// </remarks>
internal sealed class GitObjects : IDisposable
{
    private readonly GitProcess git;
    private readonly Lock turn = new();
    private (Process Process, BufferedStream Output)? running;

    private GitObjects(GitProcess git, Process process)
    {
        this.git = git;
        running = Listen(process);
    }

    /// <summary>Starts the process.</summary>
    public static Outcome<GitObjects> Start(GitProcess git) =>
        Begin(git).Is(out var process, out var why) ? Outcome<GitObjects>.From(new(git, process)) : Outcome<GitObjects>.Refused(why);

    /// <summary>The bytes of a content and how many they are. There are none when the repository does not have it, as in a clone without
    /// contents, or when they are more than wanted.</summary>
    /// <param name="id">Its name, of hexadecimal digits.</param>
    /// <param name="most">How many bytes are wanted at most.</param>
    public (byte[]? Bytes, long Length) Read(string id, long most)
    {
        lock (turn)
        {
            if (running is null && Begin(git).Is(out var process, out _))
            {
                running = Listen(process);
            }

            if (running is not var (asked, output))
            {
                return (null, 0);
            }

            try
            {
                asked.StandardInput.BaseStream.Write(Encoding.ASCII.GetBytes(id + "\n"));
                asked.StandardInput.BaseStream.Flush();
                if (Line(output) is { } head)
                {
                    return Answer(head, output, most);
                }
            }
            catch (IOException)
            {
                // It has ended while it was asked.
            }

            End();
            return (null, 0);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => End();

    private static Outcome<Process> Begin(GitProcess git) => git.Start("cat-file", "--batch");

    private static (Process, BufferedStream) Listen(Process process)
    {
        // Whatever it has to say is said by the answer that does not come; it must not wait for somebody to listen.
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        return (process, new(process.StandardOutput.BaseStream, 64 << 10));
    }

    private void End()
    {
        if (running is not var (process, output))
        {
            return;
        }

        running = null;
        using (process)
        {
            try
            {
                process.StandardInput.Close();
            }
            catch (IOException)
            {
                // What was not taken any more is not missed.
            }

            output.Dispose();
            process.WaitForExit();
        }
    }

    private static (byte[]? Bytes, long Length) Answer(string line, BufferedStream output, long most)
    {
        var head = line.Split(' ');
        if (head.Length != 3 || !long.TryParse(head[2], NumberStyles.None, CultureInfo.InvariantCulture, out var length))
        {
            return (null, 0);
        }

        var bytes = length <= Math.Min(most, Array.MaxLength) ? new byte[length] : null;
        if (bytes is not null)
        {
            output.ReadExactly(bytes);
        }
        else
        {
            Skip(output, length);
        }

        _ = output.ReadByte();
        return (bytes, length);
    }

    private static void Skip(BufferedStream output, long length)
    {
        var rest = new byte[64 << 10];
        while (length > 0)
        {
            var part = rest.AsSpan(0, (int)Math.Min(length, rest.Length));
            output.ReadExactly(part);
            length -= part.Length;
        }
    }

    // Null when it ends before a line does.
    private static string? Line(BufferedStream output)
    {
        var line = new StringBuilder();
        for (var next = output.ReadByte(); next != '\n'; next = output.ReadByte())
        {
            if (next < 0)
            {
                return null;
            }

            line.Append((char)next);
        }

        return line.ToString();
    }
}
