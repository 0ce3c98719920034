using System.CommandLine;
using Ohmstead.Output;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>The commands that list what is in the drawer, on order, and to be bought.</summary>
internal static class StockLists
{
    /// <summary>What is in the drawer.</summary>
    public static Command Drawer(Terminal terminal) =>
        new ListCommand(
            terminal,
            "drawer",
            """
            List the lots in the drawer: how many are left, how long they may lie, what is to be done first.

            Examples:
              ohmstead drawer records
              ohmstead drawer records --form csv
            """,
            StockListings.Drawer
        ).Build();

    /// <summary>What is on order.</summary>
    public static Command Orders(Terminal terminal) =>
        new ListCommand(
            terminal,
            "orders",
            """
            List the orders: where each stands, for how long, and what it holds up.

            Examples:
              ohmstead orders records
              ohmstead orders records --form json
            """,
            StockListings.Orders
        ).Build();

    /// <summary>What is to be bought.</summary>
    public static Command Buy(Terminal terminal) =>
        new ListCommand(
            terminal,
            "buy",
            """
            List what to buy for the whole collection: equal needs in one line, less the drawer, less what is on order.

            Examples:
              ohmstead buy records
              ohmstead buy records --form csv
            """,
            StockListings.ToBuy
        ).Build();
}
