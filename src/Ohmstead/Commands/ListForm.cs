using System.CommandLine;
using Ohmstead.Output;

namespace Ohmstead.Commands;

/// <summary>How a list is told.</summary>
internal static class ListForm
{
    /// <summary>The option.</summary>
    public static Option<string> Option()
    {
        var form = new Option<string>("--form")
        {
            Description = "How it is told: text for people, csv for a spreadsheet or a shop (RFC 4180), json for programs.",
            DefaultValueFactory = _ => Listing.Forms[0],
        };
        form.AcceptOnlyFromAmong([.. Listing.Forms]);
        return form;
    }
}
