using System.Diagnostics;
using System.Globalization;
using System.Text;
using Ohmstead.Electronics;

namespace Ohmstead.Git;

/// <summary>Reads contents by their names out of one process of git, one after the other; several threads may ask.</summary>
/// <remarks>Contents are asked for by name and never by path: a path may hold a line end, and what is asked for is told by lines.</remarks>
internal sealed class GitObjects : IDisposable
{
    private readonly Process process;
    private readonly Lock turn = new();
    private readonly BufferedStream output;

    private GitObjects(Process process)
    {
        this.process = process;
        output = new(process.StandardOutput.BaseStream, 64 << 10);
        // Whatever it has to say is said by the answer that does not come; it must not wait for somebody to listen.
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
    }

    /// <summary>Starts the process.</summary>
    public static Outcome<GitObjects> Start(GitProcess git) =>
        git.Start("cat-file", "--batch").Is(out var process, out var why)
            ? Outcome<GitObjects>.From(new(process))
            : Outcome<GitObjects>.Refused(why);

    /// <summary>The bytes of a content; null when the repository does not have it, as in a clone without contents.</summary>
    /// <param name="id">Its name, of hexadecimal digits.</param>
    public byte[]? Read(string id)
    {
        lock (turn)
        {
            process.StandardInput.BaseStream.Write(Encoding.ASCII.GetBytes(id + "\n"));
            process.StandardInput.BaseStream.Flush();
            var head = Line().Split(' ');
            if (head.Length != 3 || !int.TryParse(head[2], NumberStyles.None, CultureInfo.InvariantCulture, out var length))
            {
                return null;
            }

            var bytes = new byte[length];
            output.ReadExactly(bytes);
            _ = output.ReadByte();
            return bytes;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        process.StandardInput.Close();
        output.Dispose();
        process.WaitForExit();
        process.Dispose();
    }

    private string Line()
    {
        var line = new StringBuilder();
        for (var next = output.ReadByte(); next >= 0 && next != '\n'; next = output.ReadByte())
        {
            line.Append((char)next);
        }

        return line.ToString();
    }
}
