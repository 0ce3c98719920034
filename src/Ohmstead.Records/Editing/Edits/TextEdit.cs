using System.Text;

namespace Ohmstead.Records.Editing.Edits;

/// <summary>One change of a text: what stands at a place is taken out and something else put in. Nothing beside it is touched.</summary>
/// <param name="Offset">Where, in UTF-16 units of the text before the change.</param>
/// <param name="Length">How much is taken out; 0 where something is only put in.</param>
/// <param name="Text">What is put in.</param>
public readonly record struct TextEdit(int Offset, int Length, string Text)
{
    /// <summary>The text after changes that do not overlap.</summary>
    /// <exception cref="ArgumentException">Two changes overlap, or one lies outside the text.</exception>
    public static string Apply(string text, params IEnumerable<TextEdit> edits)
    {
        var result = new StringBuilder(text.Length + 256);
        var at = 0;
        foreach (var edit in edits.OrderBy(edit => edit.Offset))
        {
            if (edit.Offset < at || edit.Offset + edit.Length > text.Length)
            {
                throw new ArgumentException("Changes overlap or lie outside the text.", nameof(edits));
            }

            result.Append(text, at, edit.Offset - at).Append(edit.Text);
            at = edit.Offset + edit.Length;
        }

        return result.Append(text, at, text.Length - at).ToString();
    }
}
