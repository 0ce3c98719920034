namespace Ohmstead.Records.Nodes;

/// <summary>Whether two pieces of front matter are word for word the same, wherever they stand.</summary>
public static class NodeWords
{
    /// <summary>True when both have the same keys in the same order with the same texts behind them. Layout and place do not count; how a
    /// scalar is quoted does, since <c>null</c> is nothing and <c>"null"</c> is a word.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    public static bool AreSame(Node one, Node other)
    {
        if (ReferenceEquals(one, other))
        {
            return true;
        }

        switch (one, other)
        {
            case (ScalarNode scalar, ScalarNode second):
                return scalar.Style == second.Style && scalar.Text == second.Text;
            case (MappingNode mapping, MappingNode second):
                if (mapping.Entries.Length != second.Entries.Length)
                {
                    return false;
                }

                for (var at = 0; at < mapping.Entries.Length; at++)
                {
                    if (mapping.Entries[at].Key != second.Entries[at].Key || !AreSame(mapping.Entries[at].Value, second.Entries[at].Value))
                    {
                        return false;
                    }
                }

                return true;
            case (SequenceNode list, SequenceNode second):
                if (list.Items.Length != second.Items.Length)
                {
                    return false;
                }

                for (var at = 0; at < list.Items.Length; at++)
                {
                    if (!AreSame(list.Items[at], second.Items[at]))
                    {
                        return false;
                    }
                }

                return true;
            default:
                return false;
        }
    }
}
