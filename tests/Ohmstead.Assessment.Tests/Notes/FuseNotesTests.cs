using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

public sealed class FuseNotesTests
{
    // IEC 60127-2, sheets 3 and 5: at 2.1 times its rating a slow fuse opens within two minutes, or within half an hour when it is of high
    // breaking capacity.
    [Fact]
    public void A_fuse_is_told_within_what_time_it_must_open()
    {
        var place = Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse, current: 500 mA }").Places);
        Assert.Contains(FuseNotes.Compute(place.Values), note =>
            note.Says == "if it is rated by IEC, slow, of low breaking capacity, it opens within 2 min at 1.05 A"
        );
        Assert.Contains(FuseNotes.Compute(place.Values), note =>
            note.Says == "if it is rated by IEC, slow, of high breaking capacity, it opens within 30 min at 1.05 A"
        );
        Assert.Contains(FuseNotes.Compute(place.Values), note => note.Says == "if it is rated by UL, it opens within 2 min at 1 A");
    }

    [Fact]
    public void A_fuse_whose_letters_are_written_is_told_its_own_times_alone()
    {
        var notes = FuseNotes.Compute(
            Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse, current: 500 mA, speed: T, breaking: H }").Places).Values
        );
        Assert.Contains(notes, note => note.Says == "it opens within 30 min at 1.05 A");
        Assert.Contains(notes, note => note.Says == "it interrupts 1.5 kA and no more");
        Assert.DoesNotContain(notes, note =>
            note.Says.Contains("2 min", StringComparison.Ordinal) || note.Says.Contains("UL", StringComparison.Ordinal)
        );
    }

    // UL 248-14: 1.35 x within an hour, 2 x within two minutes (Littelfuse, Fuseology; Eaton GMA); nothing of IEC beside it.
    [Fact]
    public void A_fuse_whose_standard_is_written_is_told_by_that_alone()
    {
        var notes = FuseNotes.Compute(
            Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse, current: 500 mA, standard: UL 248-14 }").Places).Values
        );
        Assert.Contains(notes, note => note.Says == "it opens within 1 h at 675 mA");
        Assert.Contains(notes, note => note.Says == "it opens within 2 min at 1 A");
        Assert.DoesNotContain(notes, note => note.Says.Contains("IEC", StringComparison.Ordinal));
    }

    // No source at hand has their times: that is told, and no time of another.
    [Theory]
    [InlineData("speed: M, breaking: L", "no source at hand has times for M, medium: they differ by maker")]
    [InlineData("speed: TT, breaking: H", "no source at hand has times for TT, very slow: they differ by maker")]
    [InlineData("speed: F, breaking: E", "no source at hand has times and breaking capacity for E, enhanced")]
    [InlineData("speed: T, breaking: E", "no source at hand has times and breaking capacity for E, enhanced")]
    public void What_has_no_times_says_so_and_borrows_none(string letters, string says)
    {
        var notes = FuseNotes.Compute(
            Assert
                .Single(Worked.Board($"parts:\n  - {{ ref: F1, kind: fuse, current: 1 A, standard: IEC 60127, {letters} }}").Places)
                .Values
        );
        Assert.Contains(notes, note => note.Says == says);
        Assert.DoesNotContain(notes, note =>
            note.Says.Contains("opens within", StringComparison.Ordinal) || note.Says.Contains("carries", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_fuse_without_a_marked_current_has_no_times() =>
        Assert.Empty(FuseNotes.Compute(Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse }").Places).Values));
}
