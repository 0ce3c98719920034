using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Checks.Boards;
using Ohmstead.Assessment.Checks.Collection;

namespace Ohmstead.Assessment.Checks;

/// <summary>All checks, listed by hand; a test compares the list with the types.</summary>
public static class CheckCatalogue
{
    /// <summary>Checks of one board.</summary>
    public static IReadOnlyList<IBoardCheck> Boards { get; } =
    [
        new CalibrationExpired(),
        new CorrectionDoubtful(),
        new DateCodeImpossible(),
        new DateInFuture(),
        new DateOutOfOrder(),
        new DecisionWithoutPlace(),
        new DesignUnknown(),
        new DriftNearsLimit(),
        new DutyImpossible(),
        new FileNameUnusable(),
        new FittedPartFails(),
        new InstrumentUnknown(),
        new LifePassed(),
        new LimitsReversed(),
        new LinkDropped(),
        new LotTooOld(),
        new LotUnknown(),
        new MaterialContradictsKind(),
        new NameLooksAlike(),
        new NewPartUnmeasured(),
        new OrderUnknown(),
        new PartUnknown(),
        new PhotographMissing(),
        new PhotographUnreadable(),
        new PieceInTwoPlaces(),
        new PointLinkUnknown(),
        new PointUnknown(),
        new PolarityContradictsKind(),
        new PolarityFromPrintAlone(),
        new PolarityNotEstablished(),
        new PowerBeforeDry(),
        new ProofIncomplete(),
        new ProofWithoutLimit(),
        new QuantityContradictsKind(),
        new ReadingFarFromMarking(),
        new ReadingIncomplete(),
        new ReadingOfEmptyPlace(),
        new ReadingOfWrongQuantity(),
        new ReadingsContradict(),
        new ReferenceRepeated(),
        new ReplacementDoubtful(),
        new ReplacementSafetyClassLower(),
        new ReplacementTemperatureLower(),
        new ReplacementVoltageLower(),
        new VerdictDisagrees(),
        new WhereaboutsContradict(),
        new WhereaboutsIncomplete(),
        new WorkAfterProof(),
        new WorkWithoutPlace(),
    ];

    /// <summary>Checks of the files that boards share: they look at no board, so what they find is known before the first is
    /// judged.</summary>
    public static IReadOnlyList<ICollectionCheck> Shared { get; } =
    [
        new DesignFileNameUnusable(),
        new DesignLimitsReversed(),
        new DesignLinkDropped(),
        new DesignNameLooksAlike(),
        new DesignPointLinkUnknown(),
        new DesignReferenceRepeated(),
        new IncomingFarFromMarking(),
        new IncomingIncomplete(),
        new NameRepeated(),
        new SharedDutyImpossible(),
        new SharedMaterialContradictsKind(),
        new SharedDateCodeImpossible(),
        new SharedPolarityContradictsKind(),
        new SharedQuantityContradictsKind(),
        new StockDateInFuture(),
        new StockDateOutOfOrder(),
        new StockLotUnknown(),
        new StockOrderUnknown(),
    ];

    /// <summary>Checks of what all boards say together.</summary>
    public static IReadOnlyList<ICollectionCheck> Together { get; } =
    [new BoardNumberRepeated(), new LotOverdrawn(), new TakenPartDoubtful()];

    /// <summary>Checks of what the files say together.</summary>
    public static IReadOnlyList<ICollectionCheck> Collection { get; } = [.. Shared, .. Together];

    /// <summary>All descriptions, in order of name.</summary>
    public static IReadOnlyList<CheckDescription> Descriptions { get; } =
    [
        .. Boards
            .Select(check => check.Description)
            .Concat(Collection.Select(check => check.Description))
            .OrderBy(description => description.Name, StringComparer.Ordinal),
    ];
}
