using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Whether a cell or a pack may stand for another: the chemistry and the number of cells must agree. A charger for one chemistry bursts
/// another, and what is charged though it cannot be bursts too.
/// </summary>
internal static class CellRules
{
    // Silver 1.55 V flat against alkaline 1.5 V sloping, mercury 1.35 V; the charge of nickel-cadmium comes to 1.45 V a cell, and a primary
    // cell bears none.
    private static readonly Source NotOne = new(
        "cells that are not one electrically; no charge into a primary cell",
        null,
        SourceBasis.CommonPractice
    );

    internal static IEnumerable<FitReason> Reasons(IFitPart place, IFitPart offer)
    {
        yield return Chemistry(place.Material?.Value, offer.Material?.Value);
        if (Count(place, offer) is { } count)
        {
            yield return count;
        }

        if (GivenVoltage.Reason(place, offer, isToldOtherwise: IsAgreed(place, offer)) is { } voltage)
        {
            yield return voltage;
        }
    }

    private static FitReason Chemistry(PartMaterial? was, PartMaterial? now)
    {
        if (was is null || now is null)
        {
            return was is null
                ? FitReason.Missing(FitAspects.Kind, "the chemistry of the original is not written")
                : FitReason.Unwritten(FitAspects.Kind, () => $"its chemistry is not written, {was} is asked for");
        }

        return was == now ? FitReason.For(FitAspects.Kind, () => $"{now}: the same chemistry")
            : was == PartMaterial.NickelCadmium && now == PartMaterial.NickelMetalHydride
                ? FitReason.Doubt(
                    FitAspects.Kind,
                    $"{now} for {was}: the same voltage; it bears a trickle charge worse, look what the charger gives"
                )
            : IsZinc(was) && IsZinc(now) ? FitReason.Doubt(FitAspects.Kind, $"{now} for {was}: the same voltage, another life")
            : was.Cell is { IsDryCell: true } && now.Cell is { IsDryCell: true }
                ? FitReason.Against(FitAspects.Kind, $"{now} for {was}: not one electrically, its voltage runs another way", NotOne)
            : FitReason.Against(
                FitAspects.Safety,
                $"{now} for {was}: another chemistry, with another voltage and another charge or none",
                NotOne
            );
    }

    private static bool IsZinc(PartMaterial chemistry) => chemistry == PartMaterial.Alkaline || chemistry == PartMaterial.ZincCarbon;

    private static FitReason? Count(IFitPart place, IFitPart offer) =>
        (place.Cells, offer.Cells) switch
        {
            ({ } was, { } now) when was.Value == now.Value => FitReason.For(FitAspects.Value, () => $"{Cells(now.Value)}: as many"),
            ({ } was, { } now) => FitReason.Against(FitAspects.Value, () => $"{Cells(now.Value)} for {Cells(was.Value)}, expected as many"),
            ({ } was, null) when offer.RatedVoltage is null => FitReason.Unwritten(FitAspects.Value, () =>
                $"how many cells it has is not written, {Cells(was.Value)} are asked for"
            ),
            (null, { }) when place.RatedVoltage is null => FitReason.Missing(
                FitAspects.Value,
                "how many cells the place asks for is not written"
            ),
            _ => null,
        };

    // So many cells of a chemistry have its voltage.
    private static bool IsAgreed(IFitPart place, IFitPart offer) =>
        place.Cells is { } was
        && offer.Cells?.Value == was.Value
        && place.Material is { } chemistry
        && offer.Material?.Value == chemistry.Value;

    private static string Cells(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "cell" : "cells")}");
}
