using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Collections;

/// <summary>Reads and checks the files that boards share.</summary>
internal static class SharedFilesRun
{
    /// <summary>What boards refer to; what was found in it is added to the list.</summary>
    public static Workshop Load(CollectionFolder folder, FileReader reader, RunOptions options, List<Finding> found)
    {
        var workshop = WorkshopLoader.Load(folder, reader, options, found);
        var ofShared = new FindingList();
        ofShared.AddRange(
            CheckCatalogue.LookAtShared(CollectionUnderCheck.From(workshop, [], options.Today) with { Stories = StoryLinks.Instance })
        );
        found.AddRange(ofShared.ToImmutable());
        if (workshop.Collection.TimeZone is { } zone && TimeZones.WhyNot(zone.Value) is { } why)
        {
            found.Add(
                new("time-zone-unknown", Severity.Error, zone.Spot.In(workshop.Collection.Path), why, "write it by region and place")
            );
        }

        return workshop;
    }
}
