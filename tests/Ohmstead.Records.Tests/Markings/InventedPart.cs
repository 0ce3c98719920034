using System.Reflection;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Markings;

/// <summary>Parts of which everything is written that a view of a part shows, whatever properties the view has.</summary>
public static class InventedPart
{
    private static readonly Spot Here = new(7, 5, 9);

    /// <summary>A part in which everything is written, but one property otherwise.</summary>
    /// <param name="name">The property; empty for none.</param>
    /// <param name="value">What it says.</param>
    public static T With<T>(string name, object? value)
        where T : class
    {
        var part = DispatchProxy.Create<T, Listed>();
        foreach (var property in typeof(T).GetProperties())
        {
            ((Listed)(object)part).Values.Add(
                property.GetMethod!.Name,
                property.Name == name ? value : Written<T>(property.Name, other: false, "as written", Here)
            );
        }

        return part;
    }

    /// <summary>Something that may be written in a property.</summary>
    public static object Written<T>(string property, bool other, string text, Spot spot) =>
        typeof(T).GetProperty(property)!.PropertyType switch
        {
            var type when type == typeof(Written<Quantity>) => new Written<Quantity>(
                new Quantity(other ? 33m : 22m, Dimension.Voltage),
                text,
                spot
            ),
            var type when type == typeof(Written<Tolerance>) => new Written<Tolerance>(Tolerance.Relative(other ? 0.1m : 0.2m), text, spot),
            var type when type == typeof(Written<string>) => new Written<string>(other ? "another word" : "a word", text, spot),
            var type when type == typeof(Written<PartKind>) => new Written<PartKind>(other ? PartKinds.Fuse : PartKinds.Relay, text, spot),
            var type when type == typeof(Written<PartRole>) => new Written<PartRole>(
                other ? PartRole.Filter : PartRole.Coupling,
                text,
                spot
            ),
            var type when type == typeof(Written<PartPolarity>) => new Written<PartPolarity>(
                other ? PartPolarity.None : PartPolarity.Bipolar,
                text,
                spot
            ),
            var type when type == typeof(Written<PartForm>) => new Written<PartForm>(other ? PartForm.Can : PartForm.Disc, text, spot),
            var type when type == typeof(Written<PartMaterial>) => new Written<PartMaterial>(
                other ? PartMaterial.X7R : PartMaterial.Lithium,
                text,
                spot
            ),
            var type when type == typeof(Written<SafetyClass>) => new Written<SafetyClass>(
                other ? SafetyClass.X2 : SafetyClass.Y2,
                text,
                spot
            ),
            var type when type == typeof(Written<FuseSpeed>) => new Written<FuseSpeed>(other ? FuseSpeed.F : FuseSpeed.T, text, spot),
            var type when type == typeof(Written<FuseBreaking>) => new Written<FuseBreaking>(
                other ? FuseBreaking.L : FuseBreaking.H,
                text,
                spot
            ),
            var type when type == typeof(Written<FuseSystem>) => new Written<FuseSystem>(
                other ? FuseSystem.UL : FuseSystem.IEC,
                text,
                spot
            ),
            var type when type == typeof(Written<FuseSize>) => new Written<FuseSize>(
                other ? FuseSize.Chip : FuseSize.FiveByTwenty,
                text,
                spot
            ),
            var type when type == typeof(Written<int>) => new Written<int>(other ? 6 : 3, text, spot),
            var type => throw new InvalidOperationException(
                $"{type} is new among the properties of a part: say here what other value it may have."
            ),
        };

    /// <summary>A part whose properties are listed by name.</summary>
    public class Listed : DispatchProxy
    {
        internal Dictionary<string, object?> Values { get; } = [];

        /// <inheritdoc/>
        protected override object? Invoke(MethodInfo? targetMethod, object?[]? args) => Values[targetMethod!.Name];
    }
}
