using System.Text;
using Ohmstead.Electronics.Markings;

namespace Ohmstead.Fuzz.Targets;

/// <summary>Prints on parts: every meaning says its rule and its source.</summary>
internal static class MarkingTarget
{
    public static void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        foreach (var meaning in PrintReader.Read(text, new YearRange(1930, 2026)))
        {
            FaultFoundException.Unless(meaning.ToString().Length > 0 && meaning.On != PrintedOn.None, "a meaning that says nothing");
        }
    }
}
