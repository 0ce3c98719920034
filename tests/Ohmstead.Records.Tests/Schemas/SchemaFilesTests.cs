using Ohmstead.Records.Schemas;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Tests.Schemas;

public sealed class SchemaFilesTests
{
    public static TheoryData<string> Names => [.. FileShapes.All.Select(file => file.SchemaName)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_schema_in_the_repository_is_the_one_its_shape_gives(string name)
    {
        var file = Path.Combine(SchemaFolder(), SchemaFiles.FileName(name));
        var current = SchemaWriter.Write(FileShapes.All.Single(shape => shape.SchemaName == name).Shape);
        if (Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1")
        {
            File.WriteAllText(file, current);
        }

        Assert.True(
            File.Exists(file) && File.ReadAllText(file) == current,
            $"schema/{name}.schema.json is not current; write it with: OHMSTEAD_WRITE=1 dotnet run --project tests/Ohmstead.Records.Tests"
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_schema_carried_by_the_program_is_the_one_its_shape_gives(string name) =>
        Assert.True(
            SchemaWriter.Write(FileShapes.All.Single(shape => shape.SchemaName == name).Shape) == SchemaFiles.Read(name),
            $"the program carries schema/{name}.schema.json as it was when it was built: write the schemas first, then build again"
        );

    [Fact]
    public void Writing_twice_gives_the_same_bytes() =>
        Assert.Equal(SchemaWriter.Write(FileShapes.Board), SchemaWriter.Write(FileShapes.Board));

    private static string SchemaFolder() => Path.Combine(Repository.Root, "schema");
}
