using NJsonSchema;
using NJsonSchema.Validation;

namespace Ohmstead.Records.Schemas;

/// <summary>Finds the one error that says most, where a schema with branches gives one for every branch.</summary>
internal static class SchemaErrors
{
    /// <summary>The innermost errors: those of each item of a list, and of the nearest branch only of a choice.</summary>
    internal static IEnumerable<InnermostError> Innermost(ValidationError error, string? description)
    {
        var known = error.Schema?.Description ?? description;
        return error switch
        {
            ChildSchemaValidationError { Kind: ValidationErrorKind.ArrayItemNotValid } item => item
                .Errors.Values.SelectMany(errors => errors)
                .SelectMany(inner => Innermost(inner, known)),
            ChildSchemaValidationError child => Nearest(error, child.Errors.Values, known),
            MultiTypeValidationError several => Nearest(error, several.Errors.Values, known),
            _ => [new InnermostError(error, known)],
        };
    }

    // The branch that got past the question of what kind of value it is, is the one that was meant.
    private static IEnumerable<InnermostError> Nearest(
        ValidationError whole,
        IEnumerable<ICollection<ValidationError>> branches,
        string? description
    )
    {
        foreach (var branch in branches)
        {
            if (branch.Count > 0 && !branch.Any(error => IsAboutType(error) && error.Path == whole.Path))
            {
                return branch.SelectMany(inner => Innermost(inner, description));
            }
        }

        return [new InnermostError(whole, description)];
    }

    private static bool IsAboutType(ValidationError error) =>
        error.Kind
            is ValidationErrorKind.ArrayExpected
                or ValidationErrorKind.BooleanExpected
                or ValidationErrorKind.IntegerExpected
                or ValidationErrorKind.NullExpected
                or ValidationErrorKind.NumberExpected
                or ValidationErrorKind.ObjectExpected
                or ValidationErrorKind.StringExpected;
}

/// <summary>An error, and what the schema says about the key it concerns.</summary>
/// <param name="Error">The error.</param>
/// <param name="Description">The description nearest to it.</param>
internal sealed record InnermostError(ValidationError Error, string? Description);
