using System.Runtime.InteropServices;

namespace Ohmstead.Benchmarks.Processes;

/// <summary>The product as a user gets it: published in Release and compiled ahead for this machine.</summary>
/// <param name="Program">The path of the program.</param>
/// <param name="Kind">Which program it is, in words.</param>
public sealed record Product(string Program, string Kind)
{
    /// <summary>Publishes it into a folder, or says why it could not.</summary>
    public static (Product? Product, string? Trouble) Publish(string folder)
    {
        var root = AppContext.BaseDirectory;
        while (root is not null && !File.Exists(Path.Combine(root, "Ohmstead.slnx")))
        {
            root = Path.GetDirectoryName(root);
        }

        if (root is null)
        {
            return (null, "no folder above this program holds Ohmstead.slnx");
        }

        var cost = new Command(
            "dotnet",
            "publish",
            Path.Combine(root, "src", "Ohmstead"),
            "-c",
            "Release",
            $"-p:PublishFor={RuntimeInformation.RuntimeIdentifier}",
            PublishedKind.Argument,
            "-o",
            folder,
            "--nologo",
            "-v",
            "quiet"
        ).Run();
        var program = ((string[])["Ohmstead", "ohmstead", "Ohmstead.exe", "ohmstead.exe"])
            .Select(name => Path.Combine(folder, name))
            .FirstOrDefault(File.Exists);
        return cost.ExitCode == 0 && program is not null
            ? (new Product(program, PublishedKind.Words), null)
            : (null, $"the product could not be published: {cost.LastLine}");
    }

    /// <summary>Judges a folder or one record.</summary>
    public Command Check(string path) => new(Program, "check", path);

    /// <summary>Writes the report of a folder.</summary>
    public Command Report(string path, string output) => new(Program, "report", path, "--to", output);

    /// <summary>Enters a reading.</summary>
    public Command Enter(string path, string board, string place, string value) =>
        new(Program, "enter", board, place, value, "--lifted", "--by", "RK", "--instrument", "meter-1", "--in", path);
}
