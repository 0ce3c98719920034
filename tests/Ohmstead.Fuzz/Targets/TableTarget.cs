using System.Text;
using Ohmstead.PartsLists;
using Ohmstead.Records.Model;

namespace Ohmstead.Fuzz.Targets;

/// <summary>Tables of comma separated values: each row read or told, and no fault without a next step.</summary>
internal static class TableTarget
{
    private static readonly ListChoices Choices = new(
        new Dictionary<string, PartKind>(StringComparer.Ordinal),
        new Dictionary<string, string>(StringComparer.Ordinal),
        _ => null
    );

    public static void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        var table = CsvTableReader.Read(text);
        foreach (var fault in table.Faults)
        {
            FaultFoundException.Unless(fault.Line >= 1, "a fault of no line");
        }

        if (table.Rows is [var headings, ..])
        {
            var (plan, why, _) = ColumnPlan.For(headings, new Dictionary<string, string>(StringComparer.Ordinal));
            FaultFoundException.Unless(plan is not null || why is not null, "no plan, and nobody says why");
            if (plan is not null)
            {
                _ = PartsListReader.Read(table, plan, Choices);
            }
        }
    }
}
