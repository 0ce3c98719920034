using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>A class name of the style sheet. The set is closed: no text of a record becomes one.</summary>
public sealed partial class ClassName
{
    internal ClassName(string name)
    {
        Name = name;
        Bytes = Encoding.ASCII.GetBytes(name);
    }

    /// <summary>The name as written in the page and in the style sheet.</summary>
    public string Name { get; }

    internal byte[] Bytes { get; }
}
