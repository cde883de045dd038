using System.Collections.Concurrent;
using BrewDeck.Deck;

namespace BrewDeck.Probes;

/// <summary>Hands what a probe says from its thread to the loop's.</summary>
public sealed class ProbeMail
{
    private readonly ConcurrentQueue<Input> _inputs = new();

    /// <summary>Rung on the probe's thread each time that something was put in.</summary>
    public event Action? Arrived;

    public void Put(Input input)
    {
        _inputs.Enqueue(input);
        Arrived?.Invoke();
    }

    /// <summary>Gives everything that has come, in order.</summary>
    public void Deliver(Action<Input> receive)
    {
        while (_inputs.TryDequeue(out var input)) receive(input);
    }
}
