using System.Globalization;
using Ohmstead.Synthetic;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>
/// Every command that writes is killed at random moments, by a signal from outside as the system sends it when memory runs out: each file
/// is what it was or what it was to become, and the same command given again ends well and leaves nothing behind.
/// </summary>
/// <remarks>
/// A moment is some number of calls into what the command does to its folder, and some microseconds after it, so that hardly any kill is
/// spent on the start of the program. OHMSTEAD_KILLS says how many; OHMSTEAD_PROGRAM may name a published program, for which a thousand
/// take minutes.
/// </remarks>
public sealed class KilledCommandTests
{
    private const int Killed = 137;

    private static readonly int Kills = int.TryParse(
        Environment.GetEnvironmentVariable("OHMSTEAD_KILLS"),
        NumberStyles.None,
        CultureInfo.InvariantCulture,
        out var asked
    )
        ? asked
        : TestExtent.Times(usual: 0, all: 50, whole: 1_000);

    [Fact]
    public async Task Killed_at_any_moment_a_command_leaves_whole_files_and_can_be_given_again()
    {
        Assert.SkipUnless(Kills > 0, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        var random = new SeededRandom(20260314);
        var commands = WritingCommands.Lines;
        var (killed, halfway, left) = (0, 0, 0);

        foreach (var (command, at) in commands.Select((command, at) => (command, at)).Take(Kills))
        {
            using var copy = WritingCommands.Ready();
            var watched = new WatchedProgram(Child.Program, copy.Root);
            var line = "exec $ohmstead " + command;
            var old = WritingCommands.Files(copy);
            var whole = await watched.ShellAsync(line);
            Assert.True(whole.Run.Exit == 0, $"{command}: {whole.Run.Error}");
            var made = WritingCommands.Files(copy);
            var first = whole
                .Calls.Select((call, number) => (call, number))
                .First(pair => pair.call.Kind is CallKind.Lock or CallKind.Write);
            for (var kill = at; kill < Kills; kill += commands.Length)
            {
                WritingCommands.Renew(copy);
                var moment = random.Between(first.number, whole.Calls.Count);
                var run = await watched.KilledAsync(line, moment, TimeSpan.FromMicroseconds(random.Between(0, 2_000)));
                var now = WritingCommands.Files(copy);
                var words = FormattableString.Invariant(
                    $"{command}: after {moment} of {whole.Calls.Count} calls: exit {run.Exit}\n{run.Error}"
                );
                Assert.True(run.Exit is Killed or 0, words);
                WritingCommands.AreOldOrNew(old, made, now, words);
                Assert.True(run.Exit != 0 || made.SequenceEqual(now), words);
                killed += run.Exit == Killed ? 1 : 0;
                halfway += now.SequenceEqual(old) || now.SequenceEqual(made) ? 0 : 1;

                // What lies about stops nobody, and is cleared away by whoever writes there next.
                if (Pending(copy) > 0 && now.SequenceEqual(old))
                {
                    left++;
                    var again = await watched.ShellAsync(line);
                    Assert.True(again.Run.Exit == 0, $"{words}{again.Run.Out}{again.Run.Error}");
                    Assert.Equal(made, WritingCommands.Files(copy));
                    Assert.Equal(0, Pending(copy));
                }
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(
            FormattableString.Invariant(
                $"{Kills} runs, {killed} killed before their end, {halfway} between two files, {left} with something left for the next run"
            )
        );
        Assert.True(killed > 0, "no run was killed before its end");
    }

    private static int Pending(CollectionCopy copy) =>
        Directory
            .GetFiles(copy.Root, ".*.new", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .Length;
}
