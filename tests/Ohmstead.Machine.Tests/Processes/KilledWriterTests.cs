using System.Diagnostics;
using System.Globalization;
using Ohmstead.Synthetic;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Processes;

/// <summary>
/// A run that writes records is killed at many moments, a thousand of them when all tests are asked for: every record is the old one or
/// the new one, whole, and the next run goes on.
/// </summary>
/// <remarks>
/// What a killed process leaves on disk is what is there while it is stopped. So the program is stopped at random moments, looked at, and
/// let go on; every hundredth time or so it is killed where it stands, and another run takes over what it left. A thousand starts of the
/// program would take minutes.
/// </remarks>
public sealed class KilledWriterTests
{
    private static readonly int Moments = TestExtent.Times(usual: 100, all: 1_000);
    private const int MomentsOfOneRun = 100;
    private const int Records = 300;

    [Fact]
    public async Task At_a_thousand_moments_no_record_is_torn_and_what_is_left_behind_stops_nobody()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "stops a process as Linux does");
        using var copy = CollectionCopy.Empty();
        using var shell = new Shell();
        var random = new SeededRandom(20260314);
        var (looked, killed, waiting) = (0, 0, 0);
        while (looked < Moments)
        {
            if (FirstOld(copy) == Records)
            {
                for (var number = 0; number < Records; number++)
                {
                    copy.Write(FileOf(number), Old(number));
                }
            }

            using var process = Child.Start("exec $ohmstead tidy .", copy.Root);
            var first = FirstOld(copy);
            while (FirstOld(copy, first) == first && !process.HasExited)
            {
                await Task.Delay(1, TestContext.Current.CancellationToken);
            }

            for (var moment = 0; moment < MomentsOfOneRun && looked < Moments && !process.HasExited; moment++)
            {
                Spin(random.Between(0, 4_000));
                if (!await shell.StopAsync(process))
                {
                    break;
                }

                first = Inspect(copy, first);
                waiting += Directory.GetFiles(copy.At("boards"), ".*.new").Length;
                looked++;
                if (moment == MomentsOfOneRun - 1)
                {
                    process.Kill();
                    await process.WaitForExitAsync(TestContext.Current.CancellationToken);
                    killed++;
                }
                else
                {
                    await shell.GoOnAsync(process);
                }
            }

            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Inspect(copy, 0, Records);
        }

        Assert.True(killed > 0 && waiting > 0, $"killed {killed}, caught while writing {waiting}");
        Assert.Equal(0, Run.Of("tidy", copy.Root).Exit);
        Assert.Equal(Records, FirstOld(copy));
        Assert.Equal(
            Enumerable.Range(0, Records).Select(FileOf).ToHashSet(),
            Directory.GetFiles(copy.At("boards")).Select(file => "boards/" + Path.GetFileName(file)).ToHashSet()
        );
    }

    [Theory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public async Task Told_to_stop_a_run_finishes_the_record_it_writes_and_begins_no_other(string signal, int exit)
    {
        Assert.SkipUnless(TestExtent.IsAll || signal == "INT", TestExtent.LeftOut);
        using var copy = CollectionCopy.Empty();
        using var shell = new Shell();
        for (var number = 0; number < Records; number++)
        {
            copy.Write(FileOf(number), Old(number));
        }

        using var process = Child.Start("exec $ohmstead tidy .", copy.Root);
        while (FirstOld(copy) == 0 && !process.HasExited)
        {
            await Task.Delay(1, TestContext.Current.CancellationToken);
        }

        await shell.SendAsync(signal, process);
        Assert.Equal(exit, (await Child.EndAsync(process)).Exit);
        Inspect(copy, 0, Records);
        Assert.Empty(Directory.GetFiles(copy.At("boards"), ".*.new"));
    }

    private static string FileOf(int number) => string.Create(CultureInfo.InvariantCulture, $"boards/SP-{number:0000}.md");

    private static string New(int number) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"---\nboard: SP-{number:0000}\ntitle: Logger   # {new string('x', 2_000)}\n---\nstory\n"
        );

    private static string Old(int number) => New(number).Replace("title: ", "title:     ", StringComparison.Ordinal);

    // Records are written in order of name, so all before the first old one are done.
    private static int FirstOld(CollectionCopy copy, int from = 0)
    {
        while (from < Records && File.Exists(copy.At(FileOf(from))) && copy.Read(FileOf(from)) == New(from))
        {
            from++;
        }

        return File.Exists(copy.At(FileOf(0))) ? from : Records;
    }

    private static int Inspect(CollectionCopy copy, int from, int count = 12)
    {
        var first = FirstOld(copy, from);
        for (var number = Math.Max(first - 2, 0); number < Math.Min(first + count, Records); number++)
        {
            var text = copy.Read(FileOf(number));
            Assert.True(text == Old(number) || text == New(number), $"{FileOf(number)} is torn: {text.Length} characters");
        }

        return first;
    }

    private static void Spin(int microseconds)
    {
        var since = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(since).TotalMicroseconds < microseconds)
        {
            Thread.SpinWait(20);
        }
    }

    /// <summary>One shell for all signals: starting one for each would take longer than what is watched.</summary>
    private sealed class Shell : IDisposable
    {
        private readonly Process shell = Child.Start("while read -r line; do eval \"$line\"; echo $?; done", Path.GetTempPath());

        /// <summary>Stops a process; false when it has ended.</summary>
        public async Task<bool> StopAsync(Process process)
        {
            if (await SayAsync($"kill -STOP {process.Id} 2>/dev/null") != "0")
            {
                return false;
            }

            // The letter behind the name in brackets: T is stopped, Z has ended.
            char state;
            do
            {
                try
                {
                    var status = await File.ReadAllTextAsync($"/proc/{process.Id}/stat", TestContext.Current.CancellationToken);
                    state = status[status.LastIndexOf(')') + 2];
                }
                catch (IOException)
                {
                    // It ended, and was taken note of, between the signal and this look.
                    return false;
                }
            } while (state is not ('T' or 'Z' or 'X'));
            return state == 'T';
        }

        public Task GoOnAsync(Process process) => SendAsync("CONT", process);

        public async Task SendAsync(string signal, Process process) => await SayAsync($"kill -{signal} {process.Id}");

        public void Dispose()
        {
            shell.StandardInput.Close();
            shell.WaitForExit();
            shell.Dispose();
        }

        private async Task<string?> SayAsync(string line)
        {
            await shell.StandardInput.WriteLineAsync(line);
            await shell.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
            return await shell.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        }
    }
}
