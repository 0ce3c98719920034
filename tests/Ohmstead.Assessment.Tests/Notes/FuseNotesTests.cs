using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

public sealed class FuseNotesTests
{
    // IEC 60127-2, from memory: a slow fuse opens within two minutes at 2.1 times its rating.
    [Fact]
    public void A_fuse_is_told_within_what_time_it_must_open()
    {
        var place = Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse, current: 500 mA }").Places);
        Assert.Contains(FuseNotes.Of(place.Values), note => note.Says == "if it is rated by IEC and slow, it opens within 2 min at 1.05 A");
    }

    [Fact]
    public void A_fuse_without_a_marked_current_has_no_times() =>
        Assert.Empty(FuseNotes.Of(Assert.Single(Worked.Board("parts:\n  - { ref: F1, kind: fuse }").Places).Values));
}
