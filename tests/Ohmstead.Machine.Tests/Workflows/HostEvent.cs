using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>What started a workflow.</summary>
/// <param name="Name">Its name, as GITHUB_EVENT_NAME says it.</param>
/// <param name="Ref">The branch, or the pull request's own.</param>
/// <param name="Commit">The commit that a checkout takes when it is told no other.</param>
internal sealed record HostEvent(string Name, string Ref, string Commit)
{
    /// <summary>What else the host tells of it, by its name in expressions.</summary>
    public IReadOnlyDictionary<string, string> Told { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    public static HostEvent Push(ScratchRepository repository) => new("push", "refs/heads/main", Head(repository));

    /// <summary>A pull request: what is committed last is proposed, and the commit before it is the main branch.</summary>
    public static HostEvent PullRequest(ScratchRepository repository) =>
        new("pull_request", "refs/pull/7/merge", Head(repository))
        {
            Told = new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["github.event.pull_request.base.sha"] = repository.Git("rev-parse", "HEAD~1").Trim(),
            },
        };

    private static string Head(ScratchRepository repository) => repository.Git("rev-parse", "HEAD").Trim();
}
