using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Assessment.Reckoning.Capacitors;
using Ohmstead.Assessment.Reckoning.Hazards;
using Ohmstead.Assessment.Reckoning.Life;
using Ohmstead.Assessment.Reckoning.Parts;
using Ohmstead.Assessment.Reckoning.Preferred;
using Ohmstead.Assessment.Reckoning.Statistics;
using Ohmstead.Assessment.Reckoning.Substitution;
using Ohmstead.Assessment.Reckoning.Supplies;
using Ohmstead.Assessment.Reckoning.Uncertainty;

namespace Ohmstead.Assessment.Reckoning;

/// <summary>Every rule that can be worked out at the bench.</summary>
public static class ReckonCatalogue
{
    /// <summary>The rules by field.</summary>
    public static IReadOnlyList<ReckonField> Fields { get; } =
    [
        new(
            "capacitors",
            [
                AgeingRule.Rule,
                ColdImpedanceRule.Rule,
                EsrRule.Rule,
                GridLeakRule.Rule,
                ImpedanceRule.Rule,
                ImpulseRule.Rule,
                InsulationRule.Rule,
                LeakageLimitRule.Rule,
                ParallelLossRule.Rule,
                QualityRule.Rule,
                ReactanceRule.Rule,
                ResonanceRule.Rule,
                RippleCurrentRule.Rule,
                RippleMultiplierRule.Rule,
                SeriesParallelRule.Rule,
                SurgeRule.Rule,
                TanDeltaRule.Rule,
                TanDeltaLimitRule.Rule,
                TantalumDeratingRule.Rule,
                TouchCurrentRule.Rule,
                WarmLeakageRule.Rule,
                WearRule.Rule,
            ]
        ),
        new(
            "other parts",
            [
                BaudErrorRule.Rule,
                FuseRule.Rule,
                MainsInsulationRule.Rule,
                MeterLoadingRule.Rule,
                PackageDateRule.Rule,
                ParallelRule.Rule,
                PartsPerMillionRule.Rule,
                TemperatureChangeRule.Rule,
                WindingRiseRule.Rule,
            ]
        ),
        new(
            "supplies",
            [
                ChokeInputRule.Rule,
                DummyLoadRule.Rule,
                NoLoadPeakRule.Rule,
                RailLimitsRule.Rule,
                RegulatorHeatRule.Rule,
                RippleRule.Rule,
                RippleEvidenceRule.Rule,
            ]
        ),
        new(
            "life of electrolytics",
            [
                ArrheniusRule.Rule,
                CoreTemperatureRule.Rule,
                LifeRule.Rule,
                MixedDutyRule.Rule,
                ReformRule.Rule,
                RemainingLifeRule.Rule,
                RippleFromVoltageRule.Rule,
                RippleHeatingRule.Rule,
                RiseFromRatingRule.Rule,
                ShelfAgeRule.Rule,
            ]
        ),
        new("preferred values", [PreferredValueRule.Rule, RatedVoltageRule.Rule]),
        new("substitution", [CornerRule.Rule, PitchRule.Rule, TwoForOneRule.Rule]),
        new(
            "uncertainty",
            [
                BudgetRule.Rule,
                DecisionRuleRule.Rule,
                RepeatedRule.Rule,
                StandardUncertaintyRule.Rule,
                UncertaintyRule.Rule,
                UncertaintyRatioRule.Rule,
            ]
        ),
        new(
            "statistics",
            [
                AgesAtFailureRule.Rule,
                InspectedOnceRule.Rule,
                LogRankRule.Rule,
                ProportionRule.Rule,
                SurvivalRule.Rule,
                TrendRule.Rule,
                WeibullRule.Rule,
            ]
        ),
        new("hazards", [ChargeGuardRule.Rule, DischargeRule.Rule, OilFilledRule.Rule]),
    ];

    /// <summary>All rules.</summary>
    public static IReadOnlyList<ReckonRule> All { get; } = [.. Fields.SelectMany(field => field.Rules)];

    /// <summary>The rule of a name, or null.</summary>
    public static ReckonRule? Find(string name) => All.FirstOrDefault(rule => rule.Name == name);
}

/// <summary>The rules of one field.</summary>
/// <param name="Name">What they are about.</param>
/// <param name="Rules">The rules, in order of name.</param>
public sealed record ReckonField(string Name, IReadOnlyList<ReckonRule> Rules);
