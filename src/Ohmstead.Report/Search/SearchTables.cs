using System.Text.Json;
using Ohmstead.Assessment.Searching;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Report.Search;

/// <summary>What the script needs to take a query apart as <see cref="SearchText"/> does.</summary>
internal static class SearchTables
{
    /// <summary>Writes the tables.</summary>
    public static void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("stops");
        foreach (var word in SearchText.Stops)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
        json.WriteStartObject("plain");
        foreach (var (written, plain) in PlainLetters.Table.OrderBy(pair => pair.Key))
        {
            json.WriteString(written.ToString(), plain);
        }

        json.WriteEndObject();
        json.WriteStartArray("units");
        foreach (var unit in UnitSpellings.Units.Where(unit => PlainLetters.Of(unit.Spelling) == unit.Spelling))
        {
            json.WriteStartArray();
            json.WriteStringValue(unit.Spelling);
            json.WriteStringValue(SearchUnits.Sign(unit.Dimension));
            json.WriteNumberValue(unit.Power);
            json.WriteNumberValue(unit.Multiplier);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteStartArray("codes");
        foreach (var code in UnitSpellings.Codes)
        {
            json.WriteStartArray();
            json.WriteStringValue(code.Letter.ToString());
            json.WriteStringValue(SearchUnits.Sign(code.Dimension));
            json.WriteNumberValue(code.Power);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteStartObject("most");
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            json.WriteNumber(SearchUnits.Sign(dimension), UnitSpellings.Most(dimension));
        }

        json.WriteEndObject();
    }
}
