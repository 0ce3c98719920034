using System.Collections.Immutable;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>The files that boards share, as records that list parts and points.</summary>
internal static class SharedFilesUnderCheck
{
    /// <summary>All of them.</summary>
    internal static IEnumerable<FileUnderCheck> List(CollectionUnderCheck collection)
    {
        yield return new CollectionFileUnderCheck(collection.Workshop.Collection) { Stories = collection.Stories };
        if (collection.Workshop.StockFile is { } stock)
        {
            yield return new StockUnderCheck(stock, collection.Today) { Stories = collection.Stories };
        }

        foreach (var design in collection.Workshop.DesignFiles)
        {
            yield return new DesignUnderCheck(design, collection.Today) { Stories = collection.Stories };
        }
    }

    private sealed class CollectionFileUnderCheck(CollectionFile collection) : FileUnderCheck(collection.Path)
    {
        public override string Called => "this collection";

        public override Duty? Duty => collection.Duty;
    }

    private sealed class StockUnderCheck(StockFile stock, DateOnly today) : FileUnderCheck(stock.Path)
    {
        public override string Called => "this drawer";

        public override IEnumerable<PartInList> Parts =>
            stock
                .Lots.Select(static lot => new PartInList(lot.Id, "lot " + lot.Id.Value, lot.Values, lot))
                .Concat(
                    stock.Orders.SelectMany(static order =>
                        order
                            .Lines.Where(static line => line.Values is not null)
                            .Select(line => new PartInList(line.Id, $"line {line.Id.Value} of order {order.Id.Value}", line.Values!))
                    )
                );

        // A lot that stands twice is told as a name that stands twice.
        public override IEnumerable<Written<string>> References => [];

        public override DateWindow? MadeWithin(PartInList part) => part.Lot is { } lot ? DateWindow.OfLot(lot, today) : null;
    }

    private sealed class DesignUnderCheck(DesignFile design, DateOnly today) : FileUnderCheck(design.Path)
    {
        public override string Called => "this design";

        public override Written<string> Id => design.Id;

        public override IEnumerable<PartInList> Parts =>
            design.Parts.Select(static part => new PartInList(part.Ref, part.Ref.Value, part.Values));

        public override ImmutableArray<TestPoint> Points => design.Points;

        public override string Story => design.Body;

        public override int StoryLine => design.BodyLine;

        public override Written<RoughDate>? Made => design.Made;

        public override (DateOnly Day, string Why)? HereBy => (today, DateWindow.Today(today));

        public override DateWindow MadeWithin(PartInList part) => DateWindow.OfDesign(design, today);

        public override bool MayBeUnread(string name) => design.UnreadParts.MayHold(name) || design.UnreadPoints.MayHold(name);
    }
}
