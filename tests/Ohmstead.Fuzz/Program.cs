using SharpFuzz;

namespace Ohmstead.Fuzz;

/// <summary>
/// <c>TARGET</c> alone: under afl-fuzz, which hands over input after input. <c>TARGET FILE…</c>: runs these inputs once, to look at what
/// was found; a folder means all files in it.
/// </summary>
internal static class Program
{
    public static int Main(string[] words)
    {
        if (words is [] || FuzzTargets.Named(words[0]) is not { } target)
        {
            Console.Error.WriteLine(
                $"usage: TARGET [FILE...], where TARGET is one of: {string.Join(' ', FuzzTargets.All.Select(each => each.Name))}"
            );
            return 2;
        }

        if (words.Length == 1)
        {
            Fuzzer.OutOfProcess.Run(stream =>
            {
                using var input = new MemoryStream();
                stream.CopyTo(input);
                target.Try(input.ToArray());
            });
            return 0;
        }

        var failed = 0;
        foreach (
            var file in words[1..]
                .SelectMany<string, string>(path =>
                    Directory.Exists(path) ? Directory.GetFiles(path).Order(StringComparer.Ordinal) : [path]
                )
        )
        {
            try
            {
                target.Try(File.ReadAllBytes(file));
            }
#pragma warning disable CA1031 // Whatever is thrown is what was looked for.
            catch (Exception found)
#pragma warning restore CA1031
            {
                failed++;
                Console.WriteLine($"{file}: {found}");
            }
        }

        Console.WriteLine($"{failed} failed");
        return failed == 0 ? 0 : 1;
    }
}
