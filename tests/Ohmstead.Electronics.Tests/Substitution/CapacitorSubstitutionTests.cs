using CsCheck;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Electronics.Tests.Substitution;

// The rules of thumb are common practice except where a row names a standard.
public sealed class CapacitorSubstitutionTests
{
    private static readonly CapacitorPlace Reservoir = new(CapacitorRole.Reservoir, CapacitorKind.AluminiumWet, 0.001m, 25m)
    {
        CelsiusRating = 85m,
    };

    private static CapacitorOffer Electrolytic(decimal microFarads, decimal volts, decimal celsius = 105m) =>
        new($"{microFarads} µF {volts} V", CapacitorKind.AluminiumWet, microFarads / 1_000_000m, volts) { CelsiusRating = celsius };

    private static SubstitutionVerdict Judge(CapacitorPlace place, CapacitorOffer offer) => CapacitorSubstitution.Judge(place, offer).Value;

    [Theory]
    [InlineData("800", ReasonWeight.Against)]
    [InlineData("900", ReasonWeight.Doubt)]
    [InlineData("1000", ReasonWeight.For)]
    [InlineData("1500", ReasonWeight.For)]
    [InlineData("2000", ReasonWeight.Doubt)]
    [InlineData("2200", ReasonWeight.Against)]
    public void A_reservoir_may_grow_by_half_and_shrink_by_nothing_unwatched(string microFarads, ReasonWeight expected) =>
        Assert.Equal(expected, Judge(Reservoir, Electrolytic(Exact.Of(microFarads), 25m)).Outcome);

    [Fact]
    public void A_hotter_rating_is_a_gain_in_life() =>
        Assert.Contains(Judge(Reservoir, Electrolytic(1000m, 25m)).Reasons, r => r.Words.Text == "105 °C for 85 °C: 4 x the life");

    [Fact]
    public void A_cooler_rating_is_refused() =>
        Assert.Equal(ReasonWeight.Against, Judge(Reservoir with { CelsiusRating = 105m }, Electrolytic(1000m, 25m, 85m)).Outcome);

    // 63 V is nearer to 64 V than 80 V, and still under the mark.
    [Fact]
    public void The_nearest_rating_is_not_good_enough_when_it_is_under_the_mark()
    {
        SubstitutionVerdict verdict = Judge(Reservoir with { RatedVolts = 64m }, Electrolytic(1000m, 63m));
        Assert.Equal(ReasonWeight.Against, verdict.Outcome);
        Assert.Equal("63 V is under the mark of 64 V; the lowest of today's ratings not under it is 80 V", verdict.Reasons[0].Words.Text);
    }

    [Theory]
    [InlineData("24", ReasonWeight.Doubt)]
    [InlineData("22", ReasonWeight.For)]
    [InlineData("26", ReasonWeight.Against)]
    public void The_voltage_that_occurs_counts_beside_the_mark(string worst, ReasonWeight expected) =>
        Assert.Equal(expected, Judge(Reservoir with { WorstVolts = Exact.Of(worst) }, Electrolytic(1000m, 25m)).Outcome);

    // 5Y3: 10 to 20 µF at the input, valve data books from memory.
    [Fact]
    public void A_valve_rectifier_limits_the_first_capacitor()
    {
        CapacitorPlace place = new(CapacitorRole.ValveReservoir, CapacitorKind.AluminiumWet, 0.000016m, 450m)
        {
            LargestInputFarads = 0.00002m,
        };
        Assert.Equal(ReasonWeight.For, Judge(place, Electrolytic(20m, 450m)).Outcome);
        Assert.Equal(ReasonWeight.Against, Judge(place, Electrolytic(22m, 450m)).Outcome);
        Assert.Equal(ReasonWeight.Against, Judge(place with { LargestInputFarads = null }, Electrolytic(22m, 450m)).Outcome);
    }

    // A tenth less ripples a tenth more, which a first capacitor may; less than that it may not: common practice.
    [Theory]
    [InlineData("14.4", true)]
    [InlineData("14.3", false)]
    public void A_first_capacitor_may_be_a_tenth_smaller(string microfarads, bool fits)
    {
        CapacitorPlace place = new(CapacitorRole.ValveReservoir, CapacitorKind.AluminiumWet, 0.000016m, 450m);
        Assert.Equal(fits, Judge(place, Electrolytic(Exact.Of(microfarads), 450m)).Outcome != ReasonWeight.Against);
    }

    // 50 % derating: KEMET derating guidelines. A 12 V rail wants 24 V, so a 25 V part.
    [Theory]
    [InlineData("25", ReasonWeight.Doubt)]
    [InlineData("20", ReasonWeight.Against)]
    public void A_tantalum_for_an_electrolytic_wants_twice_the_voltage(string volts, ReasonWeight expected)
    {
        CapacitorPlace place = new(CapacitorRole.Decoupling, CapacitorKind.AluminiumWet, 0.00001m, 16m) { WorstVolts = 12m };
        Assert.Equal(expected, Judge(place, new("bead", CapacitorKind.TantalumSolid, 0.00001m, Exact.Of(volts))).Outcome);
    }

    [Fact]
    public void A_tantalum_never_goes_onto_a_low_impedance_rail() =>
        Assert.Contains(
            Judge(
                Reservoir with
                {
                    WorstVolts = 5m,
                },
                new("bead", CapacitorKind.TantalumSolid, 0.001m, 25m) { CelsiusRating = 105m }
            ).Reasons,
            r => r is { Weight: ReasonWeight.Against, Aspect: "kind" }
        );

    [Theory]
    [InlineData(CapacitorKind.Polyester, CapacitorKind.AluminiumWet, CapacitorRole.Timing, ReasonWeight.Against)]
    [InlineData(CapacitorKind.Polyester, CapacitorKind.AluminiumWet, CapacitorRole.Coupling, ReasonWeight.Against)]
    [InlineData(CapacitorKind.CeramicClass1, CapacitorKind.CeramicClass2, CapacitorRole.Filter, ReasonWeight.Against)]
    [InlineData(CapacitorKind.Paper, CapacitorKind.Polyester, CapacitorRole.Coupling, ReasonWeight.For)]
    [InlineData(CapacitorKind.Polyester, CapacitorKind.Paper, CapacitorRole.Coupling, ReasonWeight.Against)]
    [InlineData(CapacitorKind.Paper, CapacitorKind.Paper, CapacitorRole.Coupling, ReasonWeight.Against)]
    [InlineData(CapacitorKind.AluminiumWet, CapacitorKind.Polyester, CapacitorRole.Coupling, ReasonWeight.For)]
    [InlineData(CapacitorKind.AluminiumWet, CapacitorKind.Polymer, CapacitorRole.Coupling, ReasonWeight.Against)]
    [InlineData(CapacitorKind.AluminiumWet, CapacitorKind.Polymer, CapacitorRole.Decoupling, ReasonWeight.Doubt)]
    [InlineData(CapacitorKind.TantalumSolid, CapacitorKind.AluminiumWet, CapacitorRole.Timing, ReasonWeight.Against)]
    [InlineData(CapacitorKind.TantalumSolid, CapacitorKind.AluminiumWet, CapacitorRole.Decoupling, ReasonWeight.Doubt)]
    [InlineData(CapacitorKind.Polystyrene, CapacitorKind.Polyester, CapacitorRole.Filter, ReasonWeight.Against)]
    [InlineData(CapacitorKind.Polystyrene, CapacitorKind.CeramicClass1, CapacitorRole.Filter, ReasonWeight.Doubt)]
    [InlineData(CapacitorKind.Polyester, CapacitorKind.Polypropylene, CapacitorRole.Coupling, ReasonWeight.For)]
    public void Kind_for_kind_depends_on_the_role(CapacitorKind original, CapacitorKind offered, CapacitorRole role, ReasonWeight expected)
    {
        CapacitorPlace place = new(role, original, 0.000001m, 50m);
        Assert.Equal(expected, Judge(place, new("offer", offered, 0.000001m, 100m)).Outcome);
    }

    // IEC 60384-14, from memory: an X never replaces a Y, a part without a class neither; a Y value is never raised.
    [Theory]
    [InlineData(SafetyClass.Y2, "0.0000000022", "250", ReasonWeight.Doubt)]
    [InlineData(SafetyClass.Y1, "0.0000000022", "250", ReasonWeight.Doubt)]
    [InlineData(SafetyClass.X1, "0.0000000022", "250", ReasonWeight.Against)]
    [InlineData(SafetyClass.None, "0.0000000022", "250", ReasonWeight.Against)]
    [InlineData(SafetyClass.Y2, "0.0000000033", "250", ReasonWeight.Against)]
    [InlineData(SafetyClass.Y2, "0.0000000022", "125", ReasonWeight.Against)]
    public void A_class_y_place_keeps_class_value_and_rating(SafetyClass offered, string farads, string acVolts, ReasonWeight expected)
    {
        CapacitorPlace place = new(CapacitorRole.Safety, CapacitorKind.CeramicClass2, 0.0000000022m, 1000m)
        {
            SafetyClass = SafetyClass.Y2,
            AlternatingVolts = 250m,
        };
        CapacitorOffer offer = new("disc", CapacitorKind.CeramicClass2, Exact.Of(farads), 1500m)
        {
            SafetyClass = offered,
            AlternatingVolts = Exact.Of(acVolts),
        };
        Assert.Equal(expected, Judge(place, offer).Outcome);
    }

    // Finding: a Y4 of 125 V was held to fit an X2 place whose voltage nobody wrote, because 2.5 kV of impulse cover 2.5 kV.
    [Theory]
    [InlineData(null, SafetyClass.Y4, "125", ReasonWeight.Against)]
    [InlineData(null, SafetyClass.X2, "310", ReasonWeight.Against)]
    [InlineData("250", SafetyClass.Y4, "250", ReasonWeight.Against)]
    [InlineData("250", SafetyClass.X2, "310", ReasonWeight.Doubt)]
    [InlineData("250", SafetyClass.Y2, "250", ReasonWeight.Doubt)]
    [InlineData("250", SafetyClass.X2, "249", ReasonWeight.Against)]
    [InlineData("440", SafetyClass.Y2, "440", ReasonWeight.Against)]
    [InlineData("250", SafetyClass.X2, null, ReasonWeight.Against)]
    public void An_x2_place_takes_a_class_that_is_for_its_voltage(string? asked, SafetyClass offered, string? rated, ReasonWeight expected)
    {
        CapacitorPlace place = new(CapacitorRole.Safety, CapacitorKind.Suppression, 0.0000001m, asked is null ? null : Exact.Of(asked))
        {
            SafetyClass = SafetyClass.X2,
        };
        Assert.Equal(
            expected,
            Judge(
                place,
                new("offer", CapacitorKind.Suppression, 0.0000001m, rated is null ? null : Exact.Of(rated)) { SafetyClass = offered }
            ).Outcome
        );
    }

    // A suppression capacitor means mains, whatever role somebody wrote beside it.
    [Theory]
    [InlineData(CapacitorRole.Filter)]
    [InlineData(CapacitorRole.Decoupling)]
    [InlineData(CapacitorRole.Other)]
    public void A_suppression_capacitor_stands_on_the_mains_whatever_its_role(CapacitorRole role)
    {
        CapacitorPlace place = new(role, CapacitorKind.Suppression, 0.0000001m, 250m);
        Assert.Equal(ReasonWeight.Against, Judge(place, new("film", CapacitorKind.Polypropylene, 0.0000001m, 630m)).Outcome);
        Assert.Equal(
            ReasonWeight.Against,
            Judge(
                place with
                {
                    SafetyClass = SafetyClass.Y2,
                },
                new("Y2", CapacitorKind.Suppression, 0.00000015m, 250m) { SafetyClass = SafetyClass.Y2 }
            ).Outcome
        );
    }

    // 230 V of mains, an original marked 250 V: a rating for the mains needs no margin above itself.
    [Fact]
    public void A_rating_for_the_mains_holds_its_margin_already() =>
        Assert.Equal(
            ReasonWeight.Doubt,
            Judge(
                new(CapacitorRole.Safety, CapacitorKind.Suppression, 0.0000001m, null) { SafetyClass = SafetyClass.X2, WorstVolts = 240m },
                new("X2", CapacitorKind.Suppression, 0.0000001m, 250m) { SafetyClass = SafetyClass.X2 }
            ).Outcome
        );

    [Fact]
    public void A_mains_place_of_unknown_class_takes_nothing() =>
        Assert.Equal(
            ReasonWeight.Against,
            Judge(
                new(CapacitorRole.Safety, CapacitorKind.MetallisedPaper, 0.0000001m, 630m),
                new("film", CapacitorKind.Polypropylene, 0.0000001m, 1000m) { SafetyClass = SafetyClass.X2 }
            ).Outcome
        );

    [Fact]
    public void An_esr_can_be_too_high_and_too_low()
    {
        CapacitorPlace place = new(CapacitorRole.Decoupling, CapacitorKind.AluminiumWet, 0.000022m, 16m)
        {
            LargestEsrOhms = 1m,
            LeastEsrOhms = 0.05m,
        };
        Assert.Equal(ReasonWeight.For, Judge(place, Electrolytic(22m, 25m) with { EsrOhms = 0.5m }).Outcome);
        Assert.Equal(ReasonWeight.Against, Judge(place, Electrolytic(22m, 25m) with { EsrOhms = 1.1m }).Outcome);
        Assert.Equal(ReasonWeight.Against, Judge(place, Electrolytic(22m, 25m) with { EsrOhms = 0.01m }).Outcome);
        Assert.Equal(ReasonWeight.Doubt, Judge(place, Electrolytic(22m, 25m)).Outcome);
    }

    [Fact]
    public void A_polar_part_never_goes_where_the_voltage_changes_sign()
    {
        CapacitorPlace place = new(CapacitorRole.AlternatingCurrent, CapacitorKind.AluminiumWet, 0.00001m, 50m) { IsBipolar = true };
        Assert.Equal(ReasonWeight.Against, Judge(place, Electrolytic(10m, 50m)).Outcome);
        Assert.Equal(ReasonWeight.For, Judge(place, Electrolytic(10m, 50m) with { IsBipolar = true }).Outcome);
    }

    [Theory]
    [InlineData(CapacitorForm.Radial, "13", "5.0", ReasonWeight.Against)]
    [InlineData(CapacitorForm.Radial, "10", "5.0", ReasonWeight.For)]
    [InlineData(CapacitorForm.Radial, "10", "7.5", ReasonWeight.Doubt)]
    [InlineData(CapacitorForm.Axial, "10", "25", ReasonWeight.Doubt)]
    [InlineData(CapacitorForm.Chip, "10", "0", ReasonWeight.Against)]
    public void A_part_must_go_into_its_room_and_holes(CapacitorForm form, string diameter, string pitch, ReasonWeight expected)
    {
        CapacitorPlace place = Reservoir with { Form = CapacitorForm.Radial, LargestDiameter = 12.5m, Pitch = 5.08m };
        Assert.Equal(
            expected,
            Judge(place, Electrolytic(1000m, 25m) with { Form = form, Diameter = Exact.Of(diameter), Pitch = Exact.Of(pitch) }).Outcome
        );
    }

    [Fact]
    public void The_best_offer_has_no_doubts_and_the_nearest_value()
    {
        CapacitorOffer[] offers =
        [
            Electrolytic(2000m, 25m),
            Electrolytic(1200m, 25m),
            Electrolytic(1000m, 35m),
            Electrolytic(1000m, 25m),
            Electrolytic(470m, 25m),
        ];
        Assert.Equal(
            ["1000 µF 25 V", "1000 µF 35 V", "1200 µF 25 V", "2000 µF 25 V"],
            CapacitorSubstitution.Rank(Reservoir, offers).Select(v => v.Offer.Name)
        );
    }

    [Fact]
    public void The_order_of_offers_does_not_change_the_ranking() =>
        Gen.Shuffle(new[] { 1000, 1200, 1500, 1800, 2000, 950 })
            .Sample(order =>
                CapacitorSubstitution
                    .Rank(Reservoir, order.Select(c => Electrolytic(c, 25m)))
                    .Select(v => v.Offer.Name)
                    .SequenceEqual(["1000 µF 25 V", "1200 µF 25 V", "1500 µF 25 V", "950 µF 25 V", "1800 µF 25 V", "2000 µF 25 V"])
            );

    [Fact]
    public void The_original_itself_always_fits_a_known_place() =>
        Gen.Select(Gen.Enum<CapacitorRole>(), Gen.Int[1, 10_000])
            .Sample(
                (role, nanoFarads) =>
                {
                    CapacitorPlace place = new(role, CapacitorKind.Polypropylene, nanoFarads / 1_000_000_000m, 100m)
                    {
                        SafetyClass = role == CapacitorRole.Safety ? SafetyClass.X2 : SafetyClass.None,
                    };
                    return Judge(place, new("original", place.Kind, place.Farads, 100m) { SafetyClass = place.SafetyClass }).Outcome
                        != ReasonWeight.Against;
                }
            );

    [Fact]
    public void A_place_without_capacitance_is_refused() =>
        Assert.Equal(
            "capacitance of the place is 0, expected above 0",
            CapacitorSubstitution.Judge(Reservoir with { Farads = 0m }, Electrolytic(1m, 25m)).Refusal
        );

    // What the circuit stands goes before any rule of thumb: 150 µF and 1000 µF are written, 1000 µF for 470 µF is 2.1 x.
    [Theory]
    [InlineData("1000", ReasonWeight.For)]
    [InlineData("1001", ReasonWeight.Against)]
    [InlineData("150", ReasonWeight.For)]
    [InlineData("149", ReasonWeight.Against)]
    public void What_the_circuit_stands_decides_where_it_is_known(string microFarads, ReasonWeight expected) =>
        Assert.Equal(
            expected,
            Judge(
                Reservoir with
                {
                    Farads = 0.00047m,
                    LeastFarads = 0.00015m,
                    MostFarads = 0.001m,
                },
                Electrolytic(Exact.Of(microFarads), 25m)
            ).Outcome
        );

    [Fact]
    public void A_can_larger_than_the_original_is_a_doubt_and_no_refusal()
    {
        CapacitorPlace place = Reservoir with { OriginalDiameter = 12.5m, OriginalHeight = 25m };
        Assert.Equal(ReasonWeight.Doubt, Judge(place, Electrolytic(1000m, 25m) with { Diameter = 16m, Height = 25m }).Outcome);
        Assert.Equal(ReasonWeight.For, Judge(place, Electrolytic(1000m, 25m) with { Diameter = 10m, Height = 20m }).Outcome);
        Assert.All(Judge(place, Electrolytic(1000m, 25m)).Reasons.Where(r => r.Aspect == "size"), r => Assert.True(r.IsMissing));
    }

    [Fact]
    public void A_voltage_that_nobody_wrote_is_missing_and_never_guessed()
    {
        CapacitorOffer unmarked = new("worn", CapacitorKind.AluminiumWet, 0.001m, null) { CelsiusRating = 105m };
        Assert.Contains(Judge(Reservoir, unmarked).Reasons, r => r is { Aspect: "voltage", IsMissing: true });
        Assert.Equal(ReasonWeight.For, Judge(Reservoir with { RatedVolts = null, WorstVolts = 20m }, Electrolytic(1000m, 25m)).Outcome);
    }

    // 470 µF: 1 to 1.5 x is 470 µF to 705 µF; a 1 µF ±5 % in timing 0.95 µF to 1.05 µF; a class Y of 2.2 nF ±20 % 1.76 nF to 2.2 nF. By
    // hand.
    [Theory]
    [InlineData(CapacitorRole.Reservoir, SafetyClass.None, "0.00047", "0.2", "470 µF … 705 µF")]
    [InlineData(CapacitorRole.Timing, SafetyClass.None, "0.000001", "0.05", "950 nF … 1.05 µF")]
    [InlineData(CapacitorRole.Safety, SafetyClass.Y2, "0.0000000022", "0.2", "1.76 nF … 2.2 nF")]
    [InlineData(CapacitorRole.Decoupling, SafetyClass.None, "0.0001", "0.2", "80 µF … 300 µF")]
    public void The_range_of_values_follows_from_the_role(
        CapacitorRole role,
        SafetyClass safety,
        string farads,
        string tolerance,
        string expected
    )
    {
        CapacitorPlace place = new(role, CapacitorKind.AluminiumWet, Exact.Of(farads), 25m)
        {
            SafetyClass = safety,
            ToleranceBelow = Exact.Of(tolerance),
            ToleranceAbove = Exact.Of(tolerance),
        };
        Assert.Equal(expected, CapacitorSubstitution.ValueRange(place).Value.Value.ToString());
    }

    // One value alone is a range of one; a picofarad less at the top and there is none.
    [Theory]
    [InlineData("0.000000100000", true)]
    [InlineData("0.000000099999", false)]
    public void A_circuit_that_stands_one_value_has_a_range_of_it(string most, bool isRange) =>
        Assert.Equal(
            isRange,
            CapacitorSubstitution.ValueRange(Reservoir with { LeastFarads = 0.0000001m, MostFarads = Exact.Of(most) }).Refusal is null
        );

    [Fact]
    public void A_circuit_that_contradicts_its_role_has_no_range() =>
        Assert.NotNull(CapacitorSubstitution.ValueRange(Reservoir with { LeastFarads = 0.01m }).Refusal);

    // Two 100 µF 350 V in series: 50 µF 700 V; two 47 µF back to back: 23.5 µF.
    [Fact]
    public void Two_parts_can_do_the_work_of_one()
    {
        Assert.Equal((0.00005m, 700m), Combinations.InSeries(0.0001m, 350m).Value.Value);
        Assert.Equal(0.0000235m, Combinations.BackToBack(0.000047m, 50m).Value.Value.Farads);
    }

    // f3 = 1 / (2 pi R C), by hand calculator.
    [Theory]
    [InlineData("1000000", "0.0000001", 1.592)]
    [InlineData("470000", "0.000000022", 15.39)]
    [InlineData("8", "0.00001", 1989)]
    public void A_coupling_capacitor_has_a_corner(string ohms, string farads, double hertz) =>
        Assert.Equal(hertz, (double)Combinations.CornerHertz(Exact.Of(ohms), Exact.Of(farads)).Value.Value, hertz * 4e-4);

    // Lead spacings: KEMET ESY taping table and Illinois Capacitor suffix list.
    [Fact]
    public void Holes_of_five_millimetres_take_cans_of_ten_and_twelve_and_a_half() =>
        Assert.Equal([10m, 12.5m], RadialCan.ForHoles(5.08m).Select(c => c.Diameter));
}
