using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

public sealed class LastingHazardTests
{
    [Fact]
    public void A_reservoir_capacitor_that_was_let_down_is_cautioned_against_for_ever_because_it_charges_again()
    {
        var board = Worked.Board(
            """
            hazards:
              - { hazard: charged capacitor, at: C1, voltage: 340 V, capacitance: 100 µF }
              - { hazard: leaking cell, at: G1 }
            bench:
              - date: 2026-03-14
                work:
                  - { at: C1, did: made safe, hazard: charged capacitor }
                  - { at: G1, did: removed }
            """
        );

        Assert.Null(board.Hazards[0].MadeSafe);
        Assert.NotNull(board.Hazards[1].MadeSafe);
    }
}
