using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Checks.Boards;
using Ohmstead.Assessment.Checks.Collection;
using Ohmstead.Assessment.Checks.Files;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks;

/// <summary>All checks, listed by hand; a test compares the list with the types.</summary>
public static class CheckCatalogue
{
    /// <summary>Checks of one record by itself, whether it is a board or a file that boards share.</summary>
    public static IReadOnlyList<IFileCheck> Files { get; } =
    [
        new DateCodeImpossible(),
        new DutyImpossible(),
        new FileNameUnusable(),
        new LimitsReversed(),
        new LinkDropped(),
        new LossLimitDoubtful(),
        new MadeTooLate(),
        new MaterialContradictsKind(),
        new NameLooksAlike(),
        new PointLinkUnknown(),
        new PolarityContradictsKind(),
        new QuantityContradictsKind(),
        new ReferenceRepeated(),
    ];

    /// <summary>Checks of one board.</summary>
    public static IReadOnlyList<IBoardCheck> Boards { get; } =
    [
        new CalibrationExpired(),
        new CorrectionDoubtful(),
        new DateInFuture(),
        new DateOutOfOrder(),
        new DecisionAtPoint(),
        new DecisionWithoutPlace(),
        new DriftNearsLimit(),
        new FittedPartFails(),
        new LifePassed(),
        new LotTooOld(),
        new NewPartUnmeasured(),
        new OrderLineUnknown(),
        new PhotographMissing(),
        new PhotographUnreadable(),
        new PieceInTwoPlaces(),
        new PolarityFromPrintAlone(),
        new PolarityNotEstablished(),
        new PowerBeforeDry(),
        new ProofIncomplete(),
        new ProofWithoutLimit(),
        new ReadingFarFromMarking(),
        new ReadingIncomplete(),
        new ReadingOfEmptyPlace(),
        new ReadingOfWrongQuantity(),
        new ReadingsContradict(),
        new ReplacementDoubtful(),
        new ReplacementSafetyClassLower(),
        new ReplacementTemperatureLower(),
        new ReplacementVoltageLower(),
        .. UnknownNames.All,
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
        new AccuracyDoubtful(),
        new IncomingFarFromMarking(),
        new IncomingIncomplete(),
        new LotNotAsOrdered(),
        new NameRepeated(),
        new OrderArrivalDoubtful(),
        new OrderLineDoubtful(),
        new StockDateInFuture(),
        new StockDateOutOfOrder(),
        new StockLotUnknown(),
        new StockOrderUnknown(),
        new ToldBeforeInFuture(),
    ];

    /// <summary>Checks of what all boards say together.</summary>
    public static IReadOnlyList<ICollectionCheck> Together { get; } =
    [new BoardNumberRepeated(), new FormerNumberTaken(), new LotOverdrawn(), new TakenPartDoubtful()];

    /// <summary>Checks of what the files say together.</summary>
    public static IReadOnlyList<ICollectionCheck> Collection { get; } = [.. Shared, .. Together];

    /// <summary>All descriptions, in order of name.</summary>
    public static IReadOnlyList<CheckDescription> Descriptions { get; } =
    [
        .. Files
            .Select(check => check.Description)
            .Concat(Boards.Select(check => check.Description))
            .Concat(Collection.Select(check => check.Description))
            .OrderBy(description => description.Name, StringComparer.Ordinal),
    ];

    /// <summary>What the checks find about one board.</summary>
    public static IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var file = new BoardFileUnderCheck(board) { Stories = board.Stories };
        return Files.SelectMany(check => check.Look(file)).Concat(Boards.SelectMany(check => check.Look(board)));
    }

    /// <summary>What the checks find in the files that boards share, before the first board is judged.</summary>
    public static IEnumerable<Finding> LookAtShared(CollectionUnderCheck collection)
    {
        FileUnderCheck[] files = [.. SharedFilesUnderCheck.List(collection)];
        return Files.SelectMany(check => files.SelectMany(check.Look)).Concat(Shared.SelectMany(check => check.Look(collection)));
    }
}
