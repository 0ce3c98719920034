using YamlDotNet.RepresentationModel;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>A workflow as its file says it.</summary>
internal sealed record WorkflowFile(YamlMappingNode Root)
{
    public YamlMappingNode Events => Root.Mapping("on");

    public IReadOnlyDictionary<string, string>? Permissions => Root.OptionalTexts("permissions");

    public IReadOnlyDictionary<string, string> Environment => Root.Texts("env");

    public string? DefaultShell => Root.Mapping("defaults").Mapping("run").Text("shell");

    public IReadOnlyList<WorkflowJob> Jobs =>
        [.. Root.Mapping("jobs").Children.Select(job => new WorkflowJob(((YamlScalarNode)job.Key).Value!, (YamlMappingNode)job.Value))];

    public static WorkflowFile Parse(string text)
    {
        var yaml = new YamlStream();
        using var reader = new StringReader(text);
        yaml.Load(reader);
        return new((YamlMappingNode)Assert.Single(yaml.Documents).RootNode);
    }
}

/// <summary>An action made of steps, as its file says it.</summary>
internal sealed record ActionFile(YamlMappingNode Root)
{
    /// <summary>What each input is when it is not given.</summary>
    public IReadOnlyDictionary<string, string> Inputs => Of("inputs", "default");

    /// <summary>The expression of each output.</summary>
    public IReadOnlyDictionary<string, string> Outputs => Of("outputs", "value");

    public IReadOnlyList<WorkflowStep> Steps =>
        [.. ((YamlSequenceNode)Root.Mapping("runs")["steps"]).Select(step => new WorkflowStep((YamlMappingNode)step))];

    public static ActionFile Read(string path) => new(WorkflowFile.Parse(File.ReadAllText(path)).Root);

    private Dictionary<string, string> Of(string key, string part) =>
        Root.Mapping(key)
            .Children.ToDictionary(
                entry => entry.Key.ToString(),
                entry => ((YamlMappingNode)entry.Value).Text(part) ?? string.Empty,
                StringComparer.Ordinal
            );
}

/// <summary>One job.</summary>
internal sealed record WorkflowJob(string Name, YamlMappingNode Node)
{
    public string? Condition => Node.Text("if");

    public IReadOnlyList<string> Needs =>
        Node.Text("needs") is { } one ? [one]
        : Node.Children.TryGetValue("needs", out var all) ? [.. ((YamlSequenceNode)all).Select(need => need.ToString())]
        : [];

    /// <summary>What its token may do; null where the workflow's own permissions hold.</summary>
    public IReadOnlyDictionary<string, string>? Permissions => Node.OptionalTexts("permissions");

    public IReadOnlyDictionary<string, string> Environment => Node.Texts("env");

    /// <summary>The environment it deploys to, with its address.</summary>
    public IReadOnlyDictionary<string, string> DeploysTo => Node.Texts("environment");

    public IReadOnlyList<WorkflowStep> Steps =>
        [.. ((YamlSequenceNode)Node["steps"]).Select(step => new WorkflowStep((YamlMappingNode)step))];
}

/// <summary>One step: an action that is used, or a script that is run.</summary>
internal sealed record WorkflowStep(YamlMappingNode Node)
{
    public string? Id => Node.Text("id");

    public string Name => Node.Text("name") ?? Uses ?? Run ?? string.Empty;

    public string? Condition => Node.Text("if");

    public string? Uses => Node.Text("uses");

    public string? Run => Node.Text("run");

    public string? Shell => Node.Text("shell");

    public string? Folder => Node.Text("working-directory");

    public IReadOnlyDictionary<string, string> With => Node.Texts("with");

    public IReadOnlyDictionary<string, string> Environment => Node.Texts("env");
}

/// <summary>What is read of YAML nodes: texts, and mappings of texts.</summary>
internal static class WorkflowNodes
{
    public static string? Text(this YamlMappingNode node, string key) =>
        node.Children.TryGetValue(key, out var value) && value is YamlScalarNode scalar ? scalar.Value : null;

    public static YamlMappingNode Mapping(this YamlMappingNode node, string key) =>
        node.Children.TryGetValue(key, out var value) && value is YamlMappingNode mapping ? mapping : new YamlMappingNode();

    public static IReadOnlyDictionary<string, string>? OptionalTexts(this YamlMappingNode node, string key) =>
        node.Children.ContainsKey(key) ? node.Texts(key) : null;

    public static IReadOnlyDictionary<string, string> Texts(this YamlMappingNode node, string key) =>
        node.Mapping(key)
            .Children.ToDictionary(
                entry => entry.Key.ToString(),
                entry => ((YamlScalarNode)entry.Value).Value ?? string.Empty,
                StringComparer.Ordinal
            );
}
