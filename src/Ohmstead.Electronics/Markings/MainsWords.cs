using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Markings;

/// <summary>
/// Words that stand on capacitors beside their value: the safety class of one for the mains, and that one may be used either way round.
/// </summary>
internal static class MainsWords
{
    private static readonly Source Classes = Source.Published("IEC 60384-14, classes and their voltages, as makers quote them");
    private static readonly Source Military = Source.Published("MIL-PRF-123D", "3.12");

    private static readonly string[] EitherWayRound = ["BP", "NP", "0+0"];
    private static readonly string[] InAnyCase = ["bip", "bipolar"];

    internal static IEnumerable<PrintMeaning> Read(string print)
    {
        if (SafetyClasses.Read(print) is { } known)
        {
            yield return new(
                "safety class of a suppression capacitor",
                Words(known),
                null,
                known.IsBoth() ? "X: across the mains; Y: from the mains to what can be touched"
                    : print[0] == 'X' ? "X: across the mains"
                    : "Y: from the mains to what can be touched",
                Classes
            )
            {
                On = PrintedOn.Suppression | PrintedOn.Film | PrintedOn.Ceramic,
            };
        }

        if (IsEitherWayRound(print))
        {
            yield return new(
                "polarity of an electrolytic",
                "bipolar: either way round",
                null,
                "BP, NP, 0+0: not polar",
                Source.CommonPractice
            )
            {
                On = PrintedOn.Electrolytic | PrintedOn.Tantalum,
            };
        }

        if (print is "BP" or "BX" or "BR" or "BG")
        {
            yield return new(
                "characteristic of a military ceramic capacitor",
                print is "BP" or "BG" ? $"{print}, a stable one of class 1" : $"{print}, of class 2",
                null,
                $"letters {print}",
                Military
            )
            {
                On = PrintedOn.Ceramic,
            };
        }
    }

    private static bool IsEitherWayRound(string print) =>
        EitherWayRound.Contains(print, StringComparer.Ordinal) || InAnyCase.Contains(print, StringComparer.OrdinalIgnoreCase);

    private static string Words(SafetyClass known) =>
        known.IsBoth()
            ? $"classes {known.Name()}: {known.AcrossTheLine()} across the line, {Words(known.ToEarth())["class ".Length..]} to earth, "
                + "each with a voltage of its own"
        : SafetyCapacitor.HighestVolts(known) is { } highest
            ? known == SafetyClass.Y4 ? $"class Y4, under {Figures.Text(highest)} V a.c."
                : $"class {known}, to {Figures.Text(highest)} V a.c."
        : $"class {known}";
}
