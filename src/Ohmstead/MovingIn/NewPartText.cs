using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Writing;

namespace Ohmstead.MovingIn;

/// <summary>Reads what was put in as a person writes it in one cell: <c>aluminium electrolytic 470uF 25V maker=Ostrel</c>.</summary>
internal static class NewPartText
{
    /// <summary>The part as one line of YAML, or what is wrong.</summary>
    public static (string? Item, string? Fault) Read(string? text)
    {
        if (text is null)
        {
            return (null, null);
        }

        var kind = PartKinds
            .All.OrderByDescending(name => name.Length)
            .FirstOrDefault(name =>
                text.StartsWith(name, StringComparison.OrdinalIgnoreCase) && (text.Length == name.Length || text[name.Length] == ' ')
            );
        if (kind is null)
        {
            return (null, $"'{PartsLists.CsvTableReader.Excerpt(text)}' does not begin with a kind of part");
        }

        var (values, fault) = SaidPart.Read(text[kind.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries), PartShape.NewPart);
        var said = new Dictionary<string, string?>(values, StringComparer.Ordinal) { ["kind"] = kind };
        return fault is null
            ? (FlowText.Mapping(PartShape.NewPart.Keys.Select(key => (key.Name, said.GetValueOrDefault(key.Name)))), null)
            : (null, fault);
    }
}
