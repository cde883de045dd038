using System.Globalization;
using BrewDeck.Deck;
using MQTTnet;

namespace BrewDeck.Probes;

/// <summary>
/// Hears a probe on a topic of an MQTT broker (MQTT 3.1.1 or 5, OASIS): each message is one or more JSON lines as in a file. A broker
/// that goes is told of once and looked for again. Nothing is connected to unless this is made.
/// </summary>
internal sealed class MqttProbe : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);

    private readonly MqttAddress _address;
    private readonly TimeProvider _time;
    private readonly ProbeMail _mail;
    private readonly LineCutter _lines = new();
    private readonly Lock _turn = new();
    private readonly CancellationTokenSource _stop = new();
    private readonly IMqttClient _client = new MqttClientFactory().CreateMqttClient();
    private readonly Task _keeping;
    private bool _gone;

    public MqttProbe(MqttAddress address, TimeProvider time, ProbeMail mail)
    {
        (_address, _time, _mail) = (address, time, mail);
        _client.ApplicationMessageReceivedAsync += Hear;
        _keeping = Task.Run(Keep);
    }

    public void Dispose()
    {
        _stop.Cancel();
        try
        {
            _keeping.Wait();
        }
        catch (AggregateException e) when (e.InnerException is OperationCanceledException)
        {
        }
        _client.Dispose();
        _stop.Dispose();
    }

    private Task Hear(MqttApplicationMessageReceivedEventArgs message)
    {
        lock (_turn)
        {
            foreach (var part in message.ApplicationMessage.Payload)
                _lines.Add(part.Span, _time.GetUtcNow());
            _lines.Add("\n"u8, _time.GetUtcNow());
            if (_lines.Take() is { } said)
                _mail.Put(said);
        }
        return Task.CompletedTask;
    }

    private async Task Keep()
    {
        while (!_stop.IsCancellationRequested)
        {
            if (!_client.IsConnected)
                await Connect();
            await Task.Delay(Pause, _time, _stop.Token);
        }
    }

    private async Task Connect()
    {
        try
        {
            var options = new MqttClientOptionsBuilder().WithTcpServer(_address.Host, _address.Port).WithCleanSession().WithTimeout(TimeSpan.FromSeconds(5));
            await _client.ConnectAsync(options.Build(), _stop.Token);
            await _client.SubscribeAsync(new MqttClientSubscribeOptionsBuilder().WithTopicFilter(_address.Topic).Build(), _stop.Token);
            _gone = false;
        }
        catch (Exception e) when (e is not OperationCanceledException || !_stop.IsCancellationRequested)
        {
            // refused, unknown, unreachable or too slow: all of it means that no reading comes
            if (!_gone)
                _mail.Put(new Input.ProbeGone());
            _gone = true;
        }
    }
}

/// <summary>Where a probe is heard: <c>mqtt://HOST[:PORT]/TOPIC</c>.</summary>
internal sealed record MqttAddress(string Host, int Port, string Topic)
{
    public const string Scheme = "mqtt://";
    private const int UsualPort = 1883;

    /// <returns>Null when it does not read.</returns>
    public static MqttAddress? Read(string text)
    {
        if (!text.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
            return null;
        var rest = text[Scheme.Length..];
        var slash = rest.IndexOf('/', StringComparison.Ordinal);
        if (slash <= 0 || slash == rest.Length - 1)
            return null;
        var (place, topic) = (rest[..slash], rest[(slash + 1)..]);
        var colon = place.LastIndexOf(':');
        // the brackets of an IPv6 address hold colons of their own
        if (colon < 0 || place.EndsWith(']'))
            return new(place.Trim('[', ']'), UsualPort, topic);
        return colon > 0 && int.TryParse(place[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port is > 0 and < 65536
            ? new(place[..colon].Trim('[', ']'), port, topic)
            : null;
    }
}
