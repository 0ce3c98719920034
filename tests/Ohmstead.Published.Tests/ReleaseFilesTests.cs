using System.Text.Json;

namespace Ohmstead.Published.Tests;

/// <summary>The steps of the workflow that makes a release, run as it runs them: with the published program of this machine, and with
/// invented ones of the machines that are not here.</summary>
public sealed class ReleaseFilesTests(PublishedProgram published, SoundRelease sound) : IClassFixture<SoundRelease>
{
    // With the moment that files.sh gives it.
    private const string Archive = "SOURCE_DATE_EPOCH=$(git show --no-patch --format=%ct \"$commit\") .github/release/archive.sh";

    private static string Here => System.Runtime.InteropServices.RuntimeInformation.RuntimeIdentifier;

    [Fact]
    public async Task A_release_is_made_of_the_published_program_and_what_is_unpacked_runs()
    {
        using var folder = new ReleaseFolder();
        await PublishAsync(folder);

        // It was not told of the commit when it was published for the tests: no such program passes for a release.
        folder.Write("records/collection.yaml", "collection: x\n");
        var tried = await folder.RunAsync($".github/release/try.sh programs/program-{Here}/program \"$commit\"");
        Assert.Equal(1, tried.Exit);
        Assert.Equal(
            "the program says it is: ohmstead 0.1.0; built from source, and not told of which commit; rules 1, record format 1; "
                + $"commit {folder.Commit} was expected\n",
            tried.Error
        );

        // Modes get lost where files are carried from one system to another.
        await folder.RunAsync("chmod -R u=rwX,go= programs && chmod 600 programs/*/program/ohmstead");
        var made = await folder.RunAsync($"{Archive} {Here} programs/program-{Here} \"$commit\" release");
        Assert.True(made.Exit == 0, made.Error);
        var packed = await folder.RunAsync($"tar -tzvf release/ohmstead-{Here}.tar.gz");
        Assert.Equal(
            [
                "-rw-r--r-- 0/0 LICENSE",
                "-rw-r--r-- 0/0 NOTICES.txt",
                "drwxr-xr-x 0/0 licences/",
                "-rw-r--r-- 0/0 licences/dotnet.txt",
                "-rw-r--r-- 0/0 licences/skiasharp.txt",
                "-rw-r--r-- 0/0 libSkiaSharp.so",
                "-rwxr-xr-x 0/0 ohmstead",
            ],
            packed
                .Out.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Select(words => $"{words[0]} {words[1]} {words[^1]}")
        );
        var run = await folder.RunAsync(
            $"mkdir unpacked && tar -xzf release/ohmstead-{Here}.tar.gz -C unpacked && cd unpacked && ./ohmstead marking 103"
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("10 nF", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "Skia",
            await File.ReadAllTextAsync(folder.At("unpacked/licences/skiasharp.txt"), TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_same_programs_give_the_same_bytes_whenever_and_by_whomever_they_are_packed()
    {
        var folder = sound.Folder;
        await folder.RunAsync("find programs -exec touch -d 2001-01-01 {} + && chmod -R u=rwX,go=rwX programs");
        foreach (var machine in new[] { "linux-arm64", "win-x64" })
        {
            await folder.RunAsync($"{Archive} {machine} programs/program-{machine} \"$commit\" again");
            foreach (var file in new[] { $"ohmstead-{machine}.tar.gz", $"ohmstead-{machine}.cdx.json" })
            {
                Assert.Equal(Bytes(folder.At($"sound/{file}")), Bytes(folder.At($"again/{file}")));
            }
        }
    }

    [Fact]
    public void A_release_has_an_archive_and_a_bill_for_each_machine_the_package_and_the_sums() =>
        Assert.Equal(
            ReleaseFolder
                .Machines.SelectMany(machine => new[] { $"ohmstead-{machine}.cdx.json", $"ohmstead-{machine}.tar.gz" })
                .Concat(["SHA256SUMS", "ohmstead.0.1.0.nupkg"])
                .Order(StringComparer.Ordinal),
            Directory.GetFiles(sound.Folder.At("sound")).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void A_bill_names_what_is_in_the_archive_of_its_machine_and_nothing_that_only_builds()
    {
        var folder = sound.Folder;
        using var locked = JsonDocument.Parse(File.ReadAllText(ReleaseFolder.Lock));
        var hashes = locked
            .RootElement.GetProperty("dependencies")
            .EnumerateObject()
            .SelectMany(framework => framework.Value.EnumerateObject())
            .Where(package => package.Value.TryGetProperty("contentHash", out _))
            .DistinctBy(package => package.Name)
            .ToDictionary(package => package.Name, package => package.Value.GetProperty("contentHash").GetString(), StringComparer.Ordinal);
        foreach (var machine in ReleaseFolder.Machines)
        {
            using var bill = JsonDocument.Parse(File.ReadAllText(folder.At($"sound/ohmstead-{machine}.cdx.json")));
            Assert.Equal(("CycloneDX", "1.6"), (Text(bill.RootElement, "bomFormat"), Text(bill.RootElement, "specVersion")));
            var parts = bill.RootElement.GetProperty("components").EnumerateArray().ToList();
            var names = parts.Select(part => Text(part, "name")).ToList();
            Assert.Equal(
                machine.Split('-')[0] switch
                {
                    "win" => "SkiaSharp.NativeAssets.Win32",
                    "osx" => "SkiaSharp.NativeAssets.macOS",
                    _ => "SkiaSharp.NativeAssets.Linux.NoDependencies",
                },
                Assert.Single(names, name => name.StartsWith("SkiaSharp.NativeAssets", StringComparison.Ordinal))
            );
            Assert.Contains($"runtime.{machine}.Microsoft.DotNet.ILCompiler", names);
            Assert.Superset(
                new HashSet<string>(["YamlDotNet", "Markdig", "Namotion.Reflection"], StringComparer.Ordinal),
                names.ToHashSet(StringComparer.Ordinal)
            );
            Assert.DoesNotContain("Meziantou.Analyzer", names);
            Assert.DoesNotContain("Microsoft.DotNet.ILCompiler", names);

            // Each with its version, its licence, and the hash that a restore compares.
            Assert.All(parts.Where(part => Text(part, "type") == "library"), part =>
            {
                Assert.Equal($"pkg:nuget/{Text(part, "name")}@{Text(part, "version")}", Text(part, "purl"));
                Assert.Contains(
                    Text(part.GetProperty("licenses")[0].GetProperty("license"), "id"),
                    (string[])["MIT", "Apache-2.0", "BSD-2-Clause"]
                );
                Assert.Equal(hashes[Text(part, "name")], Text(part.GetProperty("properties")[0], "value"));
            });

            // Whatever is named is one of them, and everything hangs together.
            var known = parts.Select(part => Text(part, "bom-ref")).Append("ohmstead").ToHashSet(StringComparer.Ordinal);
            var needs = bill
                .RootElement.GetProperty("dependencies")
                .EnumerateArray()
                .ToDictionary(
                    entry => Text(entry, "ref"),
                    entry => entry.GetProperty("dependsOn").EnumerateArray().Select(one => one.GetString()!).ToArray(),
                    StringComparer.Ordinal
                );
            Assert.Equal(known.Order(StringComparer.Ordinal), needs.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(known.Order(StringComparer.Ordinal), Reached("ohmstead", needs, []).Order(StringComparer.Ordinal));
        }
    }

    public static TheoryData<string, string> Falsified { get; } =
        new()
        {
            { "printf x >> release/ohmstead-linux-x64.tar.gz", "ohmstead-linux-x64.tar.gz is not the one that was meant: its SHA-256 is " },
            { "sed -i '1p' release/SHA256SUMS", "SHA256SUMS has not one sum of ohmstead-" },
            { "touch release/letter", "SHA256SUMS has not one sum of letter" },
            { "rm release/ohmstead-win-x64.cdx.json", "SHA256SUMS names a file that is not there" },
            { "rm release/SHA256SUMS", "there is no SHA256SUMS" },
            { "rm release/ohmstead-win-x64.tar.gz; resum", "there is no ohmstead-win-x64.tar.gz" },
            { "rm release/*.nupkg; resum", "there is no package of the tool" },
            { "touch release/letter; resum", "there are 16 files, and 15 were expected: " },
            { "rm release/ohmstead-win-x64.cdx.json; resum", "there is no ohmstead-win-x64.cdx.json" },
            {
                "cp release/ohmstead-linux-arm64.tar.gz release/ohmstead-linux-x64.tar.gz; resum",
                "ohmstead-linux-x64.tar.gz holds a ohmstead that is not for linux-x64"
            },
            {
                "cp release/ohmstead-linux-x64.tar.gz release/ohmstead-win-x64.tar.gz; resum",
                "ohmstead-win-x64.tar.gz holds: LICENSE NOTICES.txt libSkiaSharp.so ohmstead; LICENSE, NOTICES.txt, ohmstead.exe and lib"
            },
            {
                "open; touch in/letter; close",
                "ohmstead-linux-x64.tar.gz holds: LICENSE NOTICES.txt letter libSkiaSharp.so ohmstead; LICENSE, NOTICES.txt, ohmstead and"
            },
            {
                "open; ln -sf /etc/passwd in/NOTICES.txt; close",
                "ohmstead-linux-x64.tar.gz holds what is neither a plain file nor the folder of licences: lrwx"
            },
            { "open; chmod u-x,go-x in/ohmstead; close", "ohmstead-linux-x64.tar.gz holds a ohmstead that may not be run" },
            {
                "open; chmod u+s in/ohmstead; close",
                "ohmstead-linux-x64.tar.gz holds what is neither a plain file nor the folder of licences: -rws"
            },
            { "open; : > in/licences/dotnet.txt; close", "ohmstead-linux-x64.tar.gz has no licences/dotnet.txt" },
            { "open; close", "ohmstead-linux-x64.cdx.json is about another archive" },
            {
                "head -c 100 release/ohmstead-linux-x64.tar.gz > cut; mv cut release/ohmstead-linux-x64.tar.gz; resum",
                "ohmstead-linux-x64.tar.gz cannot be unpacked"
            },
            {
                "sed -i s/YamlDotNet/AnotherNet/ release/ohmstead-osx-arm64.cdx.json; resum",
                "ohmstead-osx-arm64.cdx.json and NOTICES.txt of ohmstead-osx-arm64.tar.gz do not name the same libraries"
            },
        };

    // What the lines above call.
    private const string Hands = """
        set -e
        rm -rf release in
        cp -R "$sound" release
        resum() { .github/release/sums.sh release; }
        open() { mkdir in; tar -xzf release/ohmstead-linux-x64.tar.gz -C in; }
        close() {
          files=$(cd in; find . -maxdepth 1 ! -name . ! -name licences ! -name LICENSE -printf '%f ')
          tar -cz --mode=go-w --owner=0 --group=0 -f release/ohmstead-linux-x64.tar.gz -C in licences LICENSE $files
          resum
        }

        """;

    [Fact]
    public async Task What_was_falsified_is_refused_in_one_line()
    {
        var folder = sound.Folder;
        var whole = await folder.RunAsync(".github/release/verify.sh sound $machines");
        Assert.Equal((0, string.Empty, string.Empty), (whole.Exit, whole.Out, whole.Error));
        foreach (var (line, told) in Falsified.Select(row => row.Data))
        {
            var before = await folder.RunAsync(Hands + line, ("sound", folder.At("sound")));
            Assert.Equal((line, 0, string.Empty), (line, before.Exit, before.Error));
            var run = await folder.RunAsync(".github/release/verify.sh release $machines");
            Assert.True(run.Exit == 1, $"{line} ends with {run.Exit}");
            Assert.StartsWith(told, Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("v0.1.0", "day", 0, "0.1.0\n")]
    [InlineData("v0.1.0", "", 1, "CHANGELOG.md gives 0.1.0 no day: write the day in place of 'not released yet'\n")]
    [InlineData("v0.2.0", "day", 1, "the tag is 'v0.2.0', and Directory.Build.props has version 0.1.0: v0.1.0 was expected\n")]
    [InlineData("0.1.0", "day", 1, "the tag is '0.1.0', and Directory.Build.props has version 0.1.0: v0.1.0 was expected\n")]
    [InlineData(
        "v0.1.0; touch x",
        "day",
        1,
        "the tag is 'v0.1.0; touch x', and Directory.Build.props has version 0.1.0: v0.1.0 was expected\n"
    )]
    public async Task A_tag_is_the_version_and_the_changelog_has_its_day(string tag, string day, int exit, string told)
    {
        using var folder = new ReleaseFolder();
        if (day.Length > 0)
        {
            folder.Replace("CHANGELOG.md", "## 0.1.0, not released yet", "## 0.1.0, 2026-12-24");
        }

        var run = await folder.RunAsync(".github/release/tag.sh \"$tag\"", ("tag", tag));
        Assert.Equal((exit, told), (run.Exit, run.Out + run.Error));
        Assert.False(File.Exists(folder.At("x")));
    }

    [Fact]
    public async Task The_words_of_a_release_are_its_chapter_of_the_changelog()
    {
        using var folder = new ReleaseFolder();
        folder.Write(
            "CHANGELOG.md",
            "# Changelog\n\n## 0.1.10, 2026-12-25\n\nten\n\n## 0.1.1, 2026-12-24\n\none\n\n### More\n\n- of it\n\n"
                + "## 0.1.0, 2026-12-23\n\nnothing\n"
        );
        Assert.Equal("\none\n\n### More\n\n- of it\n", (await folder.RunAsync(".github/release/notes.sh 0.1.1")).Out);
        Assert.Equal("\nnothing\n", (await folder.RunAsync(".github/release/notes.sh 0.1.0")).Out);
        var none = await folder.RunAsync(".github/release/notes.sh 0.1");
        Assert.Equal((1, "CHANGELOG.md has no chapter of 0.1\n"), (none.Exit, none.Error));
    }

    [Fact]
    public async Task A_whole_release_is_put_on_the_host_and_a_falsified_one_is_not()
    {
        var folder = sound.Folder;
        folder.Write("bin/gh", "#!/bin/sh\nprintf '%s\\n' \"$@\" > asked\n");
        folder.Executable("bin/gh");
        await folder.RunAsync("cp -R sound falsified && printf x >> falsified/ohmstead-osx-arm64.tar.gz");
        Assert.Equal(1, (await folder.RunAsync(".github/release/release.sh v0.1.0 falsified")).Exit);
        Assert.False(File.Exists(folder.At("asked")));
        var run = await folder.RunAsync(".github/release/release.sh v0.1.0 sound");
        Assert.True(run.Exit == 0, run.Error);
        var asked = await File.ReadAllLinesAsync(folder.At("asked"), TestContext.Current.CancellationToken);
        Assert.Equal(["release", "create", "v0.1.0", "--verify-tag", "--title", "Ohmstead 0.1.0", "--notes-file"], asked[..7]);
        Assert.Equal(Directory.GetFiles(folder.At("sound")).Length, asked[8..].Length);
    }

    // What the workflow does on the machine of a program.
    private async Task PublishAsync(ReleaseFolder folder)
    {
        var program = Path.GetDirectoryName(published.Path)!;
        Assert.SkipUnless(PublishedKind.IsLinked, "a release is linked ahead of time, and no C linker is on the path");
        var run = await folder.RunAsync(
            $".github/release/publish.sh {Here} \"$commit\" programs/program-{Here}",
            ("BUILT", program),
            ("LOCK", ReleaseFolder.Lock)
        );
        Assert.True(run.Exit == 0, run.Out + run.Error);
    }

    private static HashSet<string> Reached(string from, Dictionary<string, string[]> needs, HashSet<string> seen)
    {
        if (seen.Add(from))
        {
            foreach (var need in needs[from])
            {
                Reached(need, needs, seen);
            }
        }

        return seen;
    }

    private static byte[] Bytes(string path) => File.ReadAllBytes(path);

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;
}
