using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Search;

/// <summary>A board as it is found: why it is in its state, what can hurt, what it waits for, what it is, what was seen and done, the
/// story, its own parts, and what was read.</summary>
public sealed class BoardSentences
{
    private readonly SentenceList said = new();
    private readonly JudgedBoard judged;
    private readonly BoardFile board;
    private readonly string[] heads;
    private readonly IReadOnlyList<ElementId> places;

    private BoardSentences(JudgedBoard judged)
    {
        (this.judged, board) = (judged, judged.Board);
        heads = [.. judged.Visits.Select(Head)];
        places = VisitAnchors.For(judged.Visits);
    }

    /// <summary>What the page of a board says.</summary>
    /// <param name="judged">The board.</param>
    /// <param name="designMaker">Who made its design, for a board that does not say it; or null.</param>
    public static SearchPage Of(JudgedBoard judged, string? designMaker) => new BoardSentences(judged).Page(designMaker);

    /// <summary>What holds for all that was written of a visit: the day and who wrote it.</summary>
    internal static string Head(BenchVisit visit) =>
        visit.By is { } by ? $"{IsoDate.Text(visit.Date.Value)} {by.Value}" : IsoDate.Text(visit.Date.Value);

    private SearchPage Page(string? designMaker)
    {
        Pressing();
        Identity(designMaker);
        Bench();
        foreach (var paragraph in StoryWords.Read(board.Body))
        {
            said.AddStory(Section("story"), paragraph);
        }

        OwnParts();
        Readings();
        return new(
            SearchGroup.Boards,
            board.Id.Value,
            board.Title.Value,
            BoardStates.Told(judged.State, judged.OverdueSince),
            LocalLink.ToFile(SiteAddress.Board(board.Id.Value)),
            said.Taken
        )
        {
            AlsoCalled =
            [
                .. board.Formerly.Select(former => former.Number.Value),
                BoardStates.Words(judged.State),
                .. judged.IsLookOverdue ? ["overdue", "inspection overdue"] : Array.Empty<string>(),
            ],
            Design = board.Design?.Value,
        };
    }

    private static ElementId Section(string name) => ElementId.For(IdPrefix.Section, name);

    private static ElementId Part(string name) => ElementId.For(IdPrefix.Part, name);

    private void Pressing()
    {
        foreach (var reason in judged.Reasons)
        {
            said.Add(Section("evidence"), $"{reason.Told}; {reason.NextStep}");
        }

        foreach (var hazard in judged.Hazards)
        {
            said.Add(
                Section("cautions"),
                PartSentence.Of(hazard.Hazard) + (hazard.MadeSafe is { } visit ? $"; made safe on {IsoDate.Text(visit.Date.Value)}" : null)
            );
        }

        foreach (var wait in board.Waiting)
        {
            said.Add(
                Section("waits"),
                PageFrame.Joined(
                    $"{wait.Since.Text}: waits for {wait.For.Value}",
                    wait.Order is { } order ? "order " + order.Value : null,
                    wait.Blocks is { } blocks ? "blocks " + blocks.Value : null,
                    wait.Until is { } until ? "until " + until.Text : null
                )
            );
        }

        foreach (var finding in judged.Reported)
        {
            said.Add(Section("findings"), $"{finding.Check}: {finding.Message}");
        }
    }

    private void Identity(string? designMaker)
    {
        said.Add(null, $"{board.Id.Value} {board.Title.Value}: {BoardStates.Told(judged.State, judged.OverdueSince)}");
        if (board.Arrived is { } arrived)
        {
            said.Add(
                Section("identity"),
                PageFrame.Joined(
                    $"came {arrived.Date?.Text}".Trim(),
                    arrived.From is { } from ? "from " + from.Value : null,
                    arrived.Complaint is { } complaint ? "complaint: " + complaint.Value : null,
                    arrived.Note?.Value
                )
            );
        }

        said.Add(
            Section("identity"),
            PageFrame.Joined([
                board.Design is { } design ? "design " + design.Value : null,
                (board.Maker?.Value ?? designMaker) is { } maker ? "maker " + maker : null,
                board.Serial is { } serial ? "serial " + serial.Value : null,
                board.Revision is { } revision ? "revision " + revision.Value : null,
                board.Made is { } made ? "made " + made.Text : null,
                .. board.Formerly.Select(former => "formerly " + former.Number.Value),
                judged.LookAgain is { } look ? "to be looked at again " + IsoDate.Text(look) : null,
            ])
        );
        foreach (var step in board.Whereabouts)
        {
            said.Add(
                Section("whereabouts"),
                PageFrame.Joined(
                    WhereaboutsWords.Describe(step),
                    step.At?.Value,
                    step.Owner is { } owner ? "owned by " + owner.Value : null,
                    step.Note?.Value
                ),
                step.By is { } by ? $"{step.Date.Text} {by.Value}" : step.Date.Text
            );
        }

        said.Add(null, board.Note?.Value);
    }

    private void Bench()
    {
        foreach (var (order, visit) in judged.Visits.Index())
        {
            said.Add(
                places[order],
                PageFrame.Joined(
                    "at the bench",
                    visit.RoomTemperature?.Text,
                    visit.Instrument is { } instrument ? "with " + instrument.Value : null,
                    visit.Powered is { } powered ? "powered from " + powered.Value : null,
                    visit.Note?.Value
                ),
                heads[order]
            );
            foreach (var found in visit.Found)
            {
                said.Add(places[order], $"found at {found.At.Value}: {found.What.Value} ({found.Severity.Text})", heads[order]);
            }

            foreach (var decision in visit.Decided)
            {
                said.Add(
                    places[order],
                    $"decided for {decision.Place?.Value}: {decision.What.Text}, because {decision.Because.Value}",
                    heads[order]
                );
            }

            foreach (var work in visit.Work)
            {
                said.Add(places[order], Work(work), heads[order]);
            }

            foreach (var photo in visit.Photos)
            {
                said.Add(places[order], "photograph: " + photo.Shows.Value, heads[order]);
            }
        }
    }

    private static string Work(WorkEntry work) =>
        PageFrame.Joined(
            string.Join(
                ' ',
                new[]
                {
                    (work.Part ?? work.At)?.Value,
                    work.Did.Text,
                    work.With is { } with ? "with " + with.Value : null,
                    work.Lot is { } lot ? "from lot " + lot.Value : null,
                }.OfType<string>()
            ),
            work.NewPart is { } part ? PartSentence.Of(part) : null,
            work.Hazard?.Text,
            work.Polarity.Length > 0 ? "way round by " + string.Join(" and ", work.Polarity.Select(evidence => evidence.Text)) : null,
            work.Dry is { } dry ? "to dry for " + dry.Text : null,
            work.Kept is { } kept ? "original: " + kept.Value : null,
            work.TakenFrom is { } taken ? "taken from " + taken.Value : null,
            work.WentTo is { } went ? "went to " + went.Value : null,
            work.IsIrreversible ? "cannot be undone" : null,
            work.Note?.Value
        );

    private void OwnParts()
    {
        foreach (var part in board.Parts)
        {
            said.Add(Part(part.Ref.Value), PartSentence.Of(part));
        }

        foreach (var point in board.Points)
        {
            said.Add(Section("proof"), PartSentence.Of(point));
        }
    }

    private void Readings()
    {
        foreach (var proof in judged.Proofs)
        {
            said.Add(
                Section("proof"),
                PageFrame.Joined([
                    "proof of " + proof.Proof.Point.Value,
                    .. proof.Proof.Values.Select(PartSentence.Of),
                    proof.Proof.Result?.Text,
                    proof.Outcome == VerdictOutcome.Inside ? null : VerdictWords.Describe(proof.Outcome),
                    proof.Proof.Note?.Value,
                ]),
                heads[proof.VisitOrder]
            );
        }

        foreach (var reading in judged.Readings)
        {
            said.Add(
                reading.Place is { } place ? Part(place.Ref.Value) : places[reading.VisitOrder],
                PartSentence.Of(reading.Reading, reading.Overall),
                heads[reading.VisitOrder]
            );
        }
    }
}
