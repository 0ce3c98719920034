using Ohmstead.Benchmarks.Processes;

namespace Ohmstead.Benchmarks.Peers;

/// <summary>The peers, each asked whether it is there. Nothing is installed.</summary>
/// <param name="folder">A folder for what has to be compiled, and for what a peer wants to keep.</param>
public sealed class PeerList(string folder)
{
    private static readonly string Files = Path.Combine(AppContext.BaseDirectory, "Peers");

    private static readonly WantedRatio Time = new("wall time", 0.25, cost => cost.Wall.TotalSeconds);
    private static readonly WantedRatio Memory = new("peak memory", 0.05, cost => cost.PeakBytes);

    /// <summary>All of them, in the order in which they are told.</summary>
    public IReadOnlyList<Peer> All => [Script(), Events(), Site()];

    private static Peer Script()
    {
        var isThere = PublishedKind.IsOnPath("node");
        var missing =
            !isThere ? "apt-get install nodejs npm"
            : !Has("js-yaml") ? "npm install --prefix FOLDER js-yaml ajv, and NODE_PATH=FOLDER/node_modules"
            : null;
        var name = isThere && Has("ajv") ? "js-yaml + ajv" : "js-yaml alone";
        var (script, schema) = (Path.Combine(Files, "validate.cjs"), Path.Combine(Files, "board.schema.json"));
        return new Peer(name, PeerJob.Check, missing, (dir, _) => new Command("node", script, schema, Path.Combine(dir, "boards")), Time);
    }

    private Peer Events()
    {
        var program = Path.Combine(folder, "events");
        var isThere =
            PublishedKind.Compiler is { } compiler
            && new Command(compiler, "-O2", "-o", program, Path.Combine(Files, "events.c"), "-lyaml").Run().ExitCode == 0;
        var missing = isThere ? null : "apt-get install gcc libyaml-dev";
        return new Peer("libyaml's events", PeerJob.Check, missing, (dir, _) => new Command(program, Path.Combine(dir, "boards")));
    }

    private Peer Site()
    {
        var missing = PublishedKind.IsOnPath("hugo") ? null : "apt-get install hugo";
        return new Peer("hugo", PeerJob.Report, missing, Build, Time, Memory);
    }

    private Command Build(string collection, string output) =>
        new(
            "hugo",
            "--quiet",
            "--noBuildLock",
            "--source",
            Path.Combine(Files, "site"),
            "--cacheDir",
            Path.Combine(folder, "cache"),
            "--contentDir",
            collection,
            "--destination",
            output
        );

    private static bool Has(string library) => new Command("node", "-e", $"require('{library}')").Run().ExitCode == 0;
}
