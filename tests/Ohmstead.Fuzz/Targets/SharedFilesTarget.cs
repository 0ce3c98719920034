using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Fuzz.Targets;

/// <summary>The files that boards share. The first byte says which: collection, instruments, stock or design.</summary>
internal static class SharedFilesTarget
{
    public static void Try(byte[] input)
    {
        if (input is not [var which, ..])
        {
            return;
        }

        var form = which % 4 == 3 ? FileForm.Markdown : FileForm.Yaml;
        var reading = NodeReaders.ForWorker(0).Read("a", input.AsMemory(1), form, ReadingLimits.Usual);
        var (isRead, findings) = (which % 4) switch
        {
            0 => Said(FileBinding.Collection("collection.yaml", reading)),
            1 => Said(FileBinding.Instruments("instruments.yaml", reading)),
            2 => Said(FileBinding.Stock("stock.yaml", reading)),
            _ => Said(FileBinding.Design("designs/a.md", reading)),
        };
        FaultFoundException.Unless(isRead || findings > 0, "a file was not read and nobody says why");
    }

    private static (bool IsRead, int Findings) Said<T>(FileReading<T> reading)
        where T : class => (reading.File is not null, reading.Findings.Length);
}
