using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Ohmstead.Tests.Support;

/// <summary>A meter at a socket of this machine, which answers queries by a table and writes down what it was sent.</summary>
internal sealed class SimulatedMeter : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly Func<string, string?> answer;
    private readonly Task serving;

    /// <summary>Begins to listen.</summary>
    /// <param name="answer">What it answers to a query; null for nothing.</param>
    public SimulatedMeter(Func<string, string?> answer)
    {
        this.answer = answer;
        listener.Start();
        serving = Task.Run(ServeAsync);
    }

    /// <summary>What it was sent, line by line.</summary>
    public List<string> Asked { get; } = [];

    /// <summary>Where it is, as a person says it.</summary>
    public string Place => $"tcp:127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}";

    /// <inheritdoc/>
    public void Dispose()
    {
        listener.Dispose();
        serving.ContinueWith(_ => { }, TaskScheduler.Default).Wait();
    }

    private async Task ServeAsync()
    {
        using var client = await listener.AcceptTcpClientAsync();
        await using var stream = client.GetStream();
        using var reader = new StreamReader(stream, Encoding.ASCII);
        while (await reader.ReadLineAsync() is { } query)
        {
            Asked.Add(query);
            if (answer(query) is { } said)
            {
                await stream.WriteAsync(Encoding.Latin1.GetBytes(said));
            }
        }
    }
}
