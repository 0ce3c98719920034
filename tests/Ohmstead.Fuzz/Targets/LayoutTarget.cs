using System.Text;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Fuzz.Targets;

/// <summary>What is laid out is never doubted by its own proof, and what was laid out once is tidy.</summary>
internal static class LayoutTarget
{
    public static void Try(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        foreach (var form in (FileForm[])[FileForm.Markdown, FileForm.Yaml])
        {
            var once = RecordLayout.Compute("a.md", text, form, new YamlNodeReader());
            FaultFoundException.Unless(once.State != LayoutState.Doubted, "the proof of a layout failed");
            if (once.State == LayoutState.Changed)
            {
                var twice = RecordLayout.Compute("a.md", once.Text, form, new YamlNodeReader());
                FaultFoundException.Unless(twice.State == LayoutState.Tidy, "what was laid out is not tidy");
            }
        }
    }
}
