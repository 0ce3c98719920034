using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;

namespace Ohmstead.Assessment.Buying;

/// <summary>One line of the buying list: a part, how many of it are needed, and where they come from.</summary>
/// <param name="What">The part in words.</param>
/// <param name="For">The places that need it, in order of board.</param>
/// <param name="Drawer">Lots in the drawer that fit, each with how many of it are set aside for this line.</param>
/// <param name="OnOrder">How many of the places wait for an order that is still open, or are served by what a line of one may
/// bring.</param>
public sealed record BuyingLine(string What, ImmutableArray<PartNeed> For, IReadOnlyList<(string Lot, int Count)> Drawer, int OnOrder)
{
    /// <summary>Lines of orders that may bring them, each with how many of it are set aside for this line; part of
    /// <see cref="OnOrder"/>.</summary>
    public IReadOnlyList<(string Line, int Count)> Coming { get; init; } = [];

    /// <summary>How many are needed.</summary>
    public int Needed => For.Length;

    /// <summary>How many of them lie in the drawer.</summary>
    public int InDrawer => Drawer.Sum(lot => lot.Count);

    /// <summary>How many must be bought.</summary>
    public int ToBuy => Needed - InDrawer - OnOrder;
}
