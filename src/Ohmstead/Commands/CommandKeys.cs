using System.CommandLine;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>How the command that was given takes the keys of a record.</summary>
internal static class CommandKeys
{
    // They stand at their place on the line, without a key.
    private static readonly string[] ByPlace = ["part", "point", "ref", "lot", "kind"];

    /// <summary>The keys of a command line.</summary>
    public static TypedKeys Of(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var options = command
            .Options.Where(option => option.Name.StartsWith("--", StringComparison.Ordinal))
            .ToDictionary(option => option.Name[2..].Replace('-', '_'), option => option.Name, StringComparer.Ordinal);
        if (options.ContainsKey("on"))
        {
            options["date"] = "--on";
        }

        // Work takes a part from another board by the option that orders have for who delivers.
        if (options.ContainsKey("new_part") && options.Remove("from", out var from))
        {
            options["taken_from"] = from;
        }

        var takesValues = command.Name == "bench" || command.Arguments.Any(argument => argument.Name == "VALUE");
        return new(options, key => takesValues && !ByPlace.Contains(key, StringComparer.Ordinal) && IsOfValues(key));
    }

    private static readonly Shape[] Shapes =
    [
        BenchShape.Reading,
        BenchShape.Proof,
        PartShape.Shape,
        PartShape.NewPart,
        FileShapes.PointShape,
        FileShapes.HazardShape,
    ];

    private static bool IsOfValues(string key) => Shapes.Any(shape => shape.PlaceOf(key) >= 0);
}
