namespace Ohmstead.Records.Findings;

/// <summary>The names of the checks that look at a file as text and as YAML, before anything is known of its meaning.</summary>
public static class TextChecks
{
    /// <summary>The file holds bytes that are not UTF-8, or it is written in another encoding.</summary>
    public const string NotUtf8 = "not-utf8";

    /// <summary>The file is a picture, an archive or another thing that is no text.</summary>
    public const string BinaryFile = "binary-file";

    /// <summary>A control character stands in the text.</summary>
    public const string ControlCharacter = "control-character";

    /// <summary>A code that Unicode reserves and never makes a character stands in the text, or half of a surrogate pair.</summary>
    public const string NotACharacter = "not-a-character";

    /// <summary>A character that shows nothing, or that turns the direction of writing, stands in the text.</summary>
    public const string HiddenCharacter = "hidden-character";

    /// <summary>The lines of one file end in different ways.</summary>
    public const string MixedLineEnds = "mixed-line-ends";

    /// <summary>The file does not begin with front matter.</summary>
    public const string FrontMatterMissing = "front-matter-missing";

    /// <summary>The front matter begins and never ends.</summary>
    public const string FrontMatterUnclosed = "front-matter-unclosed";

    /// <summary>A line of dashes ends the front matter before its last keys.</summary>
    public const string FrontMatterCut = "front-matter-cut";

    /// <summary>The file holds the two sides of a merge that nobody decided.</summary>
    public const string MergeConflict = "merge-conflict";

    /// <summary>The front matter cannot be read as YAML.</summary>
    public const string YamlSyntax = "yaml-syntax";

    /// <summary>What stands at the top is a list or a single value, not keys with values.</summary>
    public const string NotAMapping = "not-a-mapping";

    /// <summary>A tab stands in the indentation.</summary>
    public const string TabIndentation = "tab-indentation";

    /// <summary>An anchor names a piece of YAML so that it can be repeated.</summary>
    public const string AnchorUsed = "anchor-used";

    /// <summary>An alias repeats a piece of YAML from elsewhere.</summary>
    public const string AliasUsed = "alias-used";

    /// <summary>A tag asks the reader to take a value for a certain type.</summary>
    public const string TagUsed = "tag-used";

    /// <summary>A merge key copies a mapping into another.</summary>
    public const string MergeKeyUsed = "merge-key-used";

    /// <summary>A directive asks for a version or a tag prefix.</summary>
    public const string DirectiveUsed = "directive-used";

    /// <summary>More than one YAML document stands in the file.</summary>
    public const string SecondDocument = "second-document";

    /// <summary>A key stands twice in one mapping.</summary>
    public const string KeyRepeated = "key-repeated";

    /// <summary>A key is a list, a mapping or nothing.</summary>
    public const string KeyNotText = "key-not-text";

    /// <summary>Mappings and lists are nested deeper than is read.</summary>
    public const string TooDeep = "too-deep";

    /// <summary>The file, its front matter, its body or one value is larger than is read.</summary>
    public const string TooLarge = "too-large";

    /// <summary>A comma inside a number cut it in two.</summary>
    public const string DecimalComma = "decimal-comma";

    /// <summary>A number sign after a space cut a value short.</summary>
    public const string ValueCutByComment = "value-cut-by-comment";

    /// <summary>All of them, in the order in which a file meets them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        BinaryFile,
        NotUtf8,
        ControlCharacter,
        NotACharacter,
        HiddenCharacter,
        MixedLineEnds,
        MergeConflict,
        FrontMatterMissing,
        FrontMatterUnclosed,
        FrontMatterCut,
        YamlSyntax,
        NotAMapping,
        TabIndentation,
        AnchorUsed,
        AliasUsed,
        TagUsed,
        MergeKeyUsed,
        DirectiveUsed,
        SecondDocument,
        KeyRepeated,
        KeyNotText,
        TooDeep,
        TooLarge,
        DecimalComma,
        ValueCutByComment,
    ];
}
