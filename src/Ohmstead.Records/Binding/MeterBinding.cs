using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Reads meters.yaml.</summary>
public static class MeterBinding
{
    /// <summary>Reads it.</summary>
    public static FileReading<MetersFile> Meters(string path, NodeReading text) => FileBinding.Read(path, text, MeterShape.File, fields =>
        {
            _ = fields.Text("note");
            return new MetersFile(path, BenchBinding.Named(fields, "meters", "meter", Meter).Items);
        });

    private static Meter? Meter(Fields fields)
    {
        var (name, talks) = (fields.Id("meter"), fields.Word("talks", Vocabulary.MeterTalks));
        var meterFields = BenchBinding.Each(fields, "fields", Field);
        return name is null || talks is null
            ? null
            : new Meter(name, talks, meterFields, fields.Spot)
            {
                What = fields.Text("what"),
                Instrument = fields.Id("instrument"),
                Ask = fields.Text("ask"),
                AskRange = fields.Text("ask_range"),
                AskFrequency = fields.Text("ask_frequency"),
                Separator = fields.Word("separator", Vocabulary.MeterSeparators)?.Value ?? MeterSeparator.Comma,
                Overload = fields.Text("overload"),
            };
    }

    private static MeterField? Field(Fields fields) =>
        fields.Word("holds", Vocabulary.MeterFields) is not { } holds
            ? null
            : new(
                holds,
                fields.Text("unit"),
                fields.Text("good"),
                BenchBinding.Each(fields, "names", name =>
                    (name.Text("says"), name.Word("is", Vocabulary.MeterFields)) is ({ } says, { } means)
                        ? new MeterName(says, means)
                        : null
                )
            );
}
