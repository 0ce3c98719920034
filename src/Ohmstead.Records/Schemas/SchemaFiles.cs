namespace Ohmstead.Records.Schemas;

/// <summary>The schemas as they lie in <c>schema/</c>, carried inside the program.</summary>
public static class SchemaFiles
{
    /// <summary>The name of a schema's file: board.schema.json.</summary>
    public static string FileName(string schemaName) => schemaName + ".schema.json";

    /// <summary>The text of a schema.</summary>
    /// <param name="schemaName">board, collection, design, instruments or stock.</param>
    /// <exception cref="ArgumentException">There is no schema of that name.</exception>
    public static string Read(string schemaName)
    {
        using var stream = typeof(SchemaFiles).Assembly.GetManifestResourceStream(FileName(schemaName))
            ?? throw new ArgumentException($"There is no schema named '{schemaName}'.", nameof(schemaName));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
