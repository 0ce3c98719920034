namespace Ohmstead.Publishing.Tables;

/// <summary>Takes the rows of a table, one after the other: of a large collection there are a million, so that none is kept.</summary>
internal interface IRowTaker
{
    /// <summary>Takes a row.</summary>
    /// <param name="cells">A cell for each key of the row's shape, in its order; null where there is nothing to say. Valid during the
    /// call.</param>
    void Take(params ReadOnlySpan<string?> cells);
}
