using System.Collections.Immutable;
using Ohmstead.Tests.Disk;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Faults;

/// <summary>
/// Every command that writes, while calls of the system fail or the process is killed: each file is what it was or what it was to become, and a run
/// that says it is done has done all of it. Some calls are tried in every run, all of them where OHMSTEAD_WHOLE is set.
/// </summary>
public sealed class WriterFaultTests
{
    private const int Internal = 4;
    private const int Killed = 137;

    private const string List = "Ref,Value,Tolerance,Voltage\n\"C21, C22\",100n,10%,63V\nR9,4k7,1%,\n";

    /// <summary>A line for each command that writes. Report and enter are tried by tests of their own, and the bench writes as enter does.</summary>
    public static TheoryData<string> Writers =>
        [
            "found SP-0007 J1 'green like copper' minor",
            "decide SP-0007 BR1 watch 'plates clean'",
            "work SP-0007 washed --with isopropanol --dry 24h",
            "wait SP-0007 'a pen, two belts' --blocks soak",
            "start collection lighthouse --name 'Fog signals: of the old light'",
            "start board SP-0021 --design bench-supply --serial 0731",
            "start design pulse-shaper --from SP-0019",
            "start parts list.csv --design rain-counter --kind 'C=polyester film' --kind 'R=metal film resistor'",
            "add part SP-0019 C31 'polyester film' 100nF 63V",
            "add point SP-0019 +15V 15V 5% ripple_limit=10mV",
            "add hazard SP-0019 'charged capacitor' at=C1 340V 100uF 220kohm",
            "tidy . --verdicts",
            "lot L-031 'aluminium electrolytic' 470uF 20% 35V 105C date_code=2610 --quantity 10 --price '0.42 EUR'",
            "incoming L-018 47.4uF 112mohm 120Hz --by TS --instrument bridge-1",
            "scrap L-013 1 'reads 70 % of its mark' --piece 2 --by TS",
            "order PO-14 placed '220 µF 100 V, ten' --from 'Two Weirs Electronics'",
            "sheet SP-0007 --to sheet.html",
            "ahead . --calendar ahead.ics",
        ];

    private static readonly (CallKind Kind, CallError Error, int Some)[] Usual =
    [
        (CallKind.Write, CallError.NoSpace, 1),
        (CallKind.Sync, CallError.InputOutput, 1),
        (CallKind.Rename, CallError.InputOutput, 1),
        (CallKind.Any, CallError.KilledBefore, 2),
    ];

    private static readonly (CallKind Kind, CallError Error, int Some)[] Whole =
    [
        .. from kind in new[]
        {
            CallKind.Open,
            CallKind.Read,
            CallKind.List,
            CallKind.Write,
            CallKind.Sync,
            CallKind.Rename,
            CallKind.Unlink,
            CallKind.Mkdir,
            CallKind.Lock,
            CallKind.Close,
        }
        from error in new[]
        {
            CallError.NoSpace,
            CallError.InputOutput,
            CallError.NotAllowed,
            CallError.ReadOnly,
            CallError.TooManyOpen,
            CallError.NotThere,
        }
        select (kind, error, int.MaxValue),
        (CallKind.Write, CallError.Half, int.MaxValue),
        (CallKind.Any, CallError.KilledBefore, int.MaxValue),
        (CallKind.Any, CallError.KilledAfter, int.MaxValue),
    ];

    [Theory]
    [MemberData(nameof(Writers))]
    public async Task Whatever_fails_each_file_is_the_old_one_or_the_new_one(string command)
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = Ready();
        var watched = new WatchedProgram(Child.Program, copy.Root);
        var line = "exec $ohmstead " + command;
        var old = Files(copy);
        var whole = await watched.ShellAsync(line);
        Assert.True(whole.Run.Exit == 0, $"{command}: {whole.Run.Error}");
        var made = Files(copy);
        Assert.NotEqual(old, made);

        foreach (var (kind, error, some) in Moments.AreAll ? Whole : Usual)
        {
            foreach (var at in Moments.Of(whole.Count(kind), some))
            {
                Renew(copy);
                var run = await watched.ShellAsync(line, new(kind, at, error));
                var now = Files(copy);
                var words = $"{command}: {kind} {at} {error}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}";
                foreach (var path in old.Keys.Concat(made.Keys).Concat(now.Keys).Distinct(StringComparer.Ordinal))
                {
                    var there = now.GetValueOrDefault(path);
                    Assert.True(
                        there == old.GetValueOrDefault(path) || there == made.GetValueOrDefault(path),
                        $"{words}{path} is neither what it was nor what it was to become"
                    );
                }

                Assert.True(run.Run.Exit != 0 || made.SequenceEqual(now), words);
                Assert.True(run.Run.Exit != Internal && !run.Run.Error.Contains("   at ", StringComparison.Ordinal), words);
                Assert.True(run.Run.Exit != Killed || error is CallError.KilledBefore or CallError.KilledAfter, words);
                Assert.True(!run.Run.Out.Contains("added", StringComparison.Ordinal) || !old.SequenceEqual(now), words);
            }
        }
    }

    private static CollectionCopy Ready()
    {
        var copy = CollectionCopy.Make();
        Beside(copy);
        return copy;
    }

    private static void Renew(CollectionCopy copy)
    {
        foreach (var entry in new DirectoryInfo(copy.Root).EnumerateFileSystemInfos())
        {
            if (entry is DirectoryInfo folder)
            {
                folder.Delete(recursive: true);
            }
            else
            {
                entry.Delete();
            }
        }

        CollectionCopy.Put(copy.Root);
        Beside(copy);
    }

    private static void Beside(CollectionCopy copy) => copy.Write("list.csv", List);

    // The bytes; what is about to get a name is not there yet.
    private static ImmutableSortedDictionary<string, string> Files(CollectionCopy copy) =>
        LinkTests
            .Files(copy.Root)
            .Where(entry =>
                entry.Value != "a folder"
                && !(Path.GetFileName(entry.Key) is { } name && name.StartsWith('.') && name.EndsWith(".new", StringComparison.Ordinal))
            )
            .ToImmutableSortedDictionary(entry => entry.Key, entry => entry.Value.Split(' ')[1], StringComparer.Ordinal);
}
