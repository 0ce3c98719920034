using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Meters;

/// <summary>What a person said of a meter.</summary>
/// <param name="Said">Where it is.</param>
/// <param name="Name">Its name in meters.yaml, or null for one that is asked.</param>
/// <param name="Patience">How long to wait for it.</param>
internal sealed record MeterWish(string Said, string? Name, TimeSpan Patience);

/// <summary>Opens the meter that a person named.</summary>
internal static class MeterOpening
{
    /// <summary>The usual name of the file of descriptions, in the folder of the collection.</summary>
    public const string FileName = "meters.yaml";

#pragma warning disable CA2000 // Whoever opened a meter has its wire, and disposes of both.
    /// <summary>Opens it.</summary>
    /// <returns>The meter, what it is in instruments.yaml where that is written, and what is told of it; or why there is none.</returns>
    public static (IMeter? Meter, string? Instrument, string Told) Open(MeterWish wish, CollectionFolder folder)
    {
        var (address, wrong) = MeterAddress.Parse(wish.Said);
        if (address is null)
        {
            return (null, null, wrong!);
        }

        Meter? described = null;
        if (wish.Name is { } name)
        {
            (described, wrong) = Described(name, folder);
            if (described is null)
            {
                return (null, null, wrong!);
            }
        }

        try
        {
            IWire wire = address.Path is { } port
                ? SerialWire.Open(port, address.Serial)
                : SocketWire.Connect(address.Host!, address.Port, wish.Patience);
            return described is { Talks.Value: MeterTalk.Lines }
                ? (
                    new LineMeter(wire, wish.Patience, described),
                    described.Instrument?.Value,
                    $"listening to {described.Name.Value} at {wish.Said}"
                )
                : Greeted(new(wire, wish.Patience, described), described, wish.Said);
        }
        catch (IOException problem)
        {
            return (null, null, $"the meter cannot be opened: {problem.Message}");
        }
    }

#pragma warning restore CA2000

    private static (IMeter? Meter, string? Instrument, string Told) Greeted(ScpiMeter meter, Meter? described, string said)
    {
        var (who, fault) = meter.Greet(() => false);
        if (who is not null)
        {
            return (meter, described?.Instrument?.Value, $"the meter at {said} says that it is {who}");
        }

        meter.Dispose();
        return (null, null, $"{fault}: {said} does not answer {ScpiWords.Who}; a meter that sends lines by itself is named with --meter");
    }

    private static (Meter? Meter, string? Fault) Described(string name, CollectionFolder folder)
    {
        if (folder.Named(FileName) is not { } path)
        {
            return (null, $"there is no {FileName} in the collection, so no meter '{name}' is described");
        }

        using var root = FolderPath.Below(folder.Root, string.Empty, makes: false);
        using var file = root.Read(path);
        if (file is null || RandomAccess.GetLength(file) > ReadingLimits.Usual.FileBytes)
        {
            return (null, $"{path} cannot be read: it is no file, or too large");
        }

        var bytes = new byte[RandomAccess.GetLength(file)];
        _ = RandomAccess.Read(file, bytes, 0);
        var read = MeterBinding.Meters(path, NodeReaders.ForWorker(0).Read(path, bytes, FileForm.Yaml, ReadingLimits.Usual));
        if (read.Findings.FirstOrDefault(finding => finding.Severity == Severity.Error) is { } fault)
        {
            return (null, $"{fault.Place}: {fault.Message}");
        }

        if (read.File?.Meters.FirstOrDefault(meter => meter.Name.Value == name) is not { } found)
        {
            return (
                null,
                Nearest.Told(
                    $"{path} describes no meter '{name}'",
                    Nearest.To(name, read.File?.Meters.Select(meter => meter.Name.Value) ?? [])
                )
            );
        }

        return
            new[] { found.Ask, found.AskRange, found.AskFrequency }.FirstOrDefault(query =>
                query is not null && !ScpiWords.IsHarmless(query.Value)
            )
                is { } query
            ? (null, $"'{query.Value}' is not sent: one query is, such as FETCh? or SENSe:CAPacitance:RANGe?, that sets nothing")
            : (found, null);
    }
}
