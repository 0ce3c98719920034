using NJsonSchema.Validation;

namespace Ohmstead.Records.Schemas;

/// <summary>Says in words what a schema error means.</summary>
internal static class SchemaWords
{
    private const int Longest = 60;

    /// <summary>One clause in lower case without a full stop.</summary>
    internal static string Say(ValidationError error) =>
        error.Kind switch
        {
            ValidationErrorKind.NoAdditionalPropertiesAllowed => $"'{Shown(error.Property)}' is no key that belongs here",
            ValidationErrorKind.PropertyRequired => $"the key '{Shown(error.Property)}' is missing",
            ValidationErrorKind.PatternMismatch => $"the text after '{Shown(error.Property)}' has another form than expected",
            ValidationErrorKind.NotInEnumeration => $"the word after '{Shown(error.Property)}' is not in its list",
            ValidationErrorKind.ArrayExpected => $"a list is expected after '{Shown(error.Property)}'",
            ValidationErrorKind.ObjectExpected => $"a mapping is expected at '{Shown(error.Property)}'",
            ValidationErrorKind.StringExpected => $"text is expected after '{Shown(error.Property)}'",
            _ => $"the value after '{Shown(error.Property)}' is of another kind than expected",
        };

    private static string Shown(string? text) =>
        text is null ? "the file"
        : text.Length <= Longest ? text
        : text[..Longest] + "…";
}
