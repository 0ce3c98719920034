using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Tests.Shapes;

/// <summary>A word of the record and what it means stand in one row: no member without its word, no word for two members.</summary>
public sealed class WordListTests
{
    [Fact]
    public void Each_kind_of_work_has_one_word() => EachHasOneWord(Vocabulary.Works);

    [Fact]
    public void Each_hazard_has_one_word() => EachHasOneWord(Vocabulary.Hazards);

    [Fact]
    public void Each_decision_has_one_word() => EachHasOneWord(Vocabulary.Decisions);

    [Fact]
    public void Each_severity_has_one_word() => EachHasOneWord(Vocabulary.Severities);

    [Fact]
    public void Each_state_of_a_reading_has_one_word() => EachHasOneWord(Vocabulary.ReadingStates);

    [Fact]
    public void In_circuit_and_out_of_it_have_one_word_each() => EachHasOneWord(Vocabulary.Circuits);

    [Fact]
    public void Each_result_of_a_test_has_one_word() => EachHasOneWord(Vocabulary.Results);

    [Fact]
    public void Each_way_to_establish_a_polarity_has_one_word() => EachHasOneWord(Vocabulary.PolarityWays);

    [Fact]
    public void Each_quantity_of_a_point_has_one_word() => EachHasOneWord(Vocabulary.PointMeasures);

    [Fact]
    public void Each_role_has_one_word() => EachHasOneWord(Vocabulary.Roles);

    [Fact]
    public void Each_polarity_has_one_word() => EachHasOneWord(Vocabulary.Polarities);

    [Fact]
    public void Each_form_has_one_word() => EachHasOneWord(Vocabulary.Forms);

    [Fact]
    public void Each_speed_of_a_fuse_has_one_word() => EachHasOneWord(Vocabulary.FuseSpeeds);

    [Fact]
    public void Each_breaking_capacity_of_a_fuse_has_one_word() => EachHasOneWord(Vocabulary.FuseBreakings);

    [Fact]
    public void Each_standard_of_a_fuse_has_one_word() => EachHasOneWord(Vocabulary.FuseStandards);

    [Fact]
    public void Each_size_of_a_fuse_has_one_word() => EachHasOneWord(Vocabulary.FuseSizes);

    [Fact]
    public void Each_verdict_that_may_be_written_has_one_word() => EachHasOneWord(Vocabulary.Verdicts);

    // A part without a class has no word for it.
    [Fact]
    public void Each_safety_class_has_one_word() =>
        Assert.Equal(Enum.GetValues<SafetyClass>().Except([SafetyClass.None]).Order(), ValuesOf(Vocabulary.SafetyClasses).Order());

    [Fact]
    public void Each_rule_of_decision_has_one_word() =>
        Assert.Equal(
            DecisionRule.All.OrderBy(rule => rule.Name, StringComparer.Ordinal),
            Vocabulary.DecisionRules.Values.OrderBy(rule => rule.Name, StringComparer.Ordinal)
        );

    [Fact]
    public void Yes_and_no_mean_what_they_say() =>
        Assert.Equal([true, false], new[] { "yes", "no" }.Select(word => Vocabulary.YesNo.Means(word, out var isSo) && isSo));

    // Gain, hours of soak and the drop of a junction are not what an accuracy is stated for.
    [Fact]
    public void Each_quantity_that_an_instrument_has_a_range_for_has_one_word() =>
        Assert.Equal(
            Enum.GetValues<Measured>().Except([Measured.Gain, Measured.Hours, Measured.ForwardVoltage]).Order(),
            ValuesOf(Vocabulary.InstrumentMeasures).Order()
        );

    [Fact]
    public void Words_are_told_in_the_order_of_their_rows() =>
        Assert.Equal(["as found", "new", "as left", "again"], Vocabulary.ReadingStates);

    [Theory]
    [InlineData("Replaced")]
    [InlineData("replaced ")]
    [InlineData("")]
    public void A_word_counts_as_it_is_written_and_not_nearly_so(string word) => Assert.False(Vocabulary.Works.Means(word, out _));

    [Fact]
    public void A_list_with_one_word_for_two_meanings_is_refused() =>
        Assert.ThrowsAny<ArgumentException>(() => new WordList<Circuit>((Circuit.In, "in"), (Circuit.Out, "in")));

    [Fact]
    public void A_list_with_two_words_for_one_meaning_is_refused() =>
        Assert.ThrowsAny<ArgumentException>(() => new WordList<Circuit>((Circuit.In, "in"), (Circuit.In, "out")));

    private static void EachHasOneWord<T>(WordList<T> words)
        where T : struct, Enum
    {
        Assert.Equal(Enum.GetValues<T>(), ValuesOf(words).Order());
        Assert.All(words, word => Assert.Equal(word, words.WordFor(Assert.Single(ValuesOf(words, word)))));
    }

    private static IEnumerable<T> ValuesOf<T>(WordList<T> words, string? only = null)
        where T : struct, Enum =>
        words
            .Where(word => only is null || word == only)
            .Select(word => words.Means(word, out var value) ? value : throw new InvalidOperationException(word));
}
