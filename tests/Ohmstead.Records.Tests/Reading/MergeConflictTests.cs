namespace Ohmstead.Records.Tests.Reading;

public sealed class MergeConflictTests
{
    [Fact]
    public void A_conflict_in_the_front_matter_is_one_finding_and_nothing_else_is_said_of_the_yaml()
    {
        var reading = ReadText.Markdown(
            """
            ---
            board: SP-0007
            <<<<<<< ours
            title: Barograph
            =======
            title: Barograph amplifier
            >>>>>>> theirs
            ---
            """
        );

        var finding = Assert.Single(reading.Findings);
        Assert.Equal("3:1+7 merge-conflict", $"{finding.At()} {finding.Check}");
        Assert.Equal(
            ["5:1+7 the other side begins here", "7:1+7 the conflict ends here"],
            finding.Related.Select(place => $"{ReadText.At(place.Place)} {place.Note}")
        );
        Assert.Null(reading.Root);
    }

    [Fact]
    public void The_common_ancestor_is_shown_too()
    {
        var reading = ReadText.Markdown("---\na: 1\n<<<<<<< ours\nb: 1\n||||||| base\nb: 0\n=======\nb: 2\n>>>>>>> theirs\n---\n");

        Assert.Equal(["5", "7", "9"], Assert.Single(reading.Findings).Related.Select(place => $"{place.Place.Line}"));
    }

    [Fact]
    public void A_conflict_in_the_body_leaves_the_front_matter_readable()
    {
        var reading = ReadText.Markdown("---\nboard: SP-0007\n---\nStory\n<<<<<<< ours\none\n=======\ntwo\n>>>>>>> theirs\n");

        Assert.Equal("5:1 merge-conflict", reading.Found());
        Assert.Equal("{board: 'SP-0007'}", reading.Root.Shape());
    }

    [Fact]
    public void Each_conflict_is_reported_once()
    {
        var conflict = "<<<<<<< ours\none\n=======\ntwo\n>>>>>>> theirs\n";

        Assert.Equal("4:1 merge-conflict, 9:1 merge-conflict", ReadText.Markdown($"---\na: 1\n---\n{conflict}{conflict}").Found());
    }

    [Fact]
    public void A_conflict_over_the_opening_dashes_is_called_a_conflict() =>
        Assert.Equal("1:1 merge-conflict", ReadText.Markdown("<<<<<<< ours\n---\na: 1\n=======\n---\na: 2\n>>>>>>> theirs\n---\n").Found());

    [Fact]
    public void A_heading_underlined_with_seven_signs_and_a_deep_quotation_are_no_conflict() =>
        Assert.Empty(ReadText.Markdown("---\na: 1\n---\nTesting\n=======\n\n>>>>>>> a deep quotation\n").Findings);
}
