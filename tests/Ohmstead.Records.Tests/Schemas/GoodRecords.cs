namespace Ohmstead.Records.Tests.Schemas;

/// <summary>One sound file of each kind, from which broken ones are made by changing one thing. All of it is invented.</summary>
internal static class GoodRecords
{
    internal static string Of(string schemaName) =>
        schemaName switch
        {
            "board" => Board,
            "design" => Design,
            "collection" => Collection,
            "instruments" => Instruments,
            "meters" => Meters,
            _ => Stock,
        };

    private const string Board = """
        ---
        board: SP-0007
        title: Barograph servo amplifier
        design: barograph-servo
        serial: 0412
        revision: C
        made: 1978
        format: 1
        arrived: { date: 2026-02, from: lookout hut store, complaint: pen drifts after an hour }
        duty: { hours_per_year: 900, temperature: 38 °C }
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %, rated_voltage: 25 V,
              low: 380 µF, loss_factor_limit: 0.14, date_code: 7834 }
          - { ref: R3, kind: carbon film resistor, resistance: 4k7, tolerance: 5 %, power: 0.5 W }
        points:
          - { point: +15V, nominal: 15 V, tolerance: 5 %, ripple_limit: 10 mV, required: yes }
          - { point: soak, measures: hours, hours: 4 }
        hazards:
          - { hazard: charged capacitor, at: C1, voltage: 340 V, capacitance: 100 µF, bleed: 220 kΩ }
        bench:
          - date: 2026-03-14
            by: RK
            temperature: 21 °C
            instrument: bridge-2
            found:
              - { at: J3, what: flux left from earlier work, severity: minor }
            readings:
              - { part: C12, state: as found, circuit: out, frequency: 120 Hz, capacitance: 391 µF, esr: 1.4 Ω, verdict: out }
              - { part: Q1, gain: 140 }
            work:
              - { part: C12, did: replaced, lot: L-031, polarity: [schematic, print] }
              - { did: cleaned, with: isopropanol, dry: 24 h, irreversible: no }
            decided:
              - { part: C4, decision: replace, because: this family fails shorted }
            proof:
              - { point: +15V, voltage: 15.06 V, ripple: 4 mV }
              - { point: soak, hours: 4, result: pass }
            photos:
              - { file: photos/SP-0007/front.png, shows: the board from the front }
        waiting:
          - { since: 2026-03-16, for: new pen motor belt, order: PO-12, blocks: drift test }
        ---

        ## Story
        The pen drifted.
        """;

    private const string Design = """
        ---
        design: barograph-servo
        title: Barograph servo amplifier
        made: 1974-05
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF }
        points:
          - { point: tone, measures: frequency, nominal: 1 kHz, tolerance: 1 % }
        known_faults:
          - { at: C12, what: dries out beside the regulator }
        note: sheet 3 is missing
        ---
        """;

    private const string Collection = """
        collection: Saltmarsh Point weather collection
        keeper: RK
        site: https://boards.example/
        repository: https://git.example/boards/blob/{commit}/{path}
        invented: yes
        decision: guarded
        look_every: 24 months
        duty: { hours_per_year: 900, temperature: 25 °C }
        """;

    private const string Instruments = """
        instruments:
          - id: bridge-2
            what: component bridge
            serial: 0412
            calibrations:
              - { date: 2025-09-12, valid: 12 months, certificate: SP-C-31 }
            accuracy:
              - { measures: capacitance, error: 0.5 %, digits: 5, step: 0.1 µF, up_to: 2000 µF }
        note: none
        """;

    private const string Meters = """
        meters:
          - meter: bridge
            what: LCR bridge at a socket
            instrument: bridge-1
            talks: scpi
            ask: FETCh?
            ask_range: SENSe:CAPacitance:RANGe?
            ask_frequency: FREQuency?
            separator: commas
            overload: OL ----
            fields:
              - { holds: capacitance, unit: F }
              - { holds: status, good: 0 +0 }
              - { holds: quantity, names: [{ says: R, is: resistance }] }
        """;

    private const string Stock = """
        lots:
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, received: 2026-02-20, quantity: 10 }
        orders:
          - { order: PO-12, placed: 2026-03-16, from: Dunmere parts, for: pen motor belt }
          - order: PO-13
            placed: 2026-03-16
            for: belts
            lines:
              - { line: 1, quantity: 2, what: pen motor belt, price: 2 EUR, cancelled: 2026-04-20 }
              - { line: 2, quantity: 9, kind: fuse, current: 250 mA, lost: 2026-04-20 }
            came:
              - { date: 2026-03-30, line: 1, quantity: 1, lot: L-031 }
        bench:
          - date: 2026-03-02
            readings:
              - { lot: L-031, state: new, leakage: 18 µA, at_voltage: 35 V }
        """;
}
