using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;
using BrewDeck.Probes;
using MQTTnet;
using MQTTnet.Server;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The real probe at a real broker, on this machine's loopback.</summary>
public sealed class MqttProbeTests : IDisposable
{
    private const string Good = "{\"vessel\":\"tun\",\"temperature_c\":66.4}";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly BlockingCollection<Input> _heard = [];
    private readonly BlockingCollection<string> _subscribed = [];
    private readonly ProbeMail _mail = new();
    private readonly int _port = FreePort();
    private MqttServer? _broker;

    public MqttProbeTests() => _mail.Arrived += () => _mail.Deliver(_heard.Add);

    public void Dispose() => _broker?.Dispose();

    [Fact]
    public async Task What_comes_on_its_topic_is_offered_and_nothing_else()
    {
        await Start();
        using var probe = Probe("brewhouse/+/probe");
        Assert.Equal("brewhouse/+/probe", Subscribed());

        await Publish("elsewhere/tun/probe", Good.Replace("66.4", "12", StringComparison.Ordinal));
        await Publish("brewhouse/tun/probe", Good);

        Assert.Equal([new ProbeValue(ReadingKind.Temperature, "tun", 66.4, TimeSpan.Zero)], Next<Input.Offered>().Values);
    }

    [Fact]
    public async Task What_cannot_be_read_is_told_and_passed_over()
    {
        await Start();
        using var probe = Probe("tun");
        Subscribed();

        await Publish("tun", "sixty-six");
        Assert.Equal("it is no JSON", Next<Input.Offered>().Why);
        await Publish("tun", new string('x', 2 * LineCutter.LongestLine));
        Assert.Equal(2, Next<Input.Offered>().Unread);
        await Publish("tun", Good);

        Assert.Equal(66.4, Assert.Single(Next<Input.Offered>().Values).Value);
    }

    [Fact]
    public async Task A_broker_that_goes_is_told_of_once_and_found_again()
    {
        await Start();
        using var probe = Probe("tun");
        Subscribed();
        await _broker!.StopAsync(new MqttServerStopOptions());
        Next<Input.ProbeGone>();

        await Start();
        Subscribed();
        await Publish("tun", Good);

        Next<Input.Offered>();
    }

    [Fact]
    public void Without_a_broker_it_is_told_and_the_program_ends_at_once()
    {
        using (Probe("tun"))
            Next<Input.ProbeGone>();
        Assert.Empty(_heard);
    }

    [Theory]
    [InlineData("mqtt://host/a/b", "host", 1883, "a/b")]
    [InlineData("MQTT://host:99/t", "host", 99, "t")]
    [InlineData("mqtt://[::1]:1884/t", "::1", 1884, "t")]
    [InlineData("mqtt://[::1]/t", "::1", 1883, "t")]
    public void An_address_says_host_port_and_topic(string text, string host, int port, string topic) =>
        Assert.Equal(new MqttAddress(host, port, topic), MqttAddress.Read(text));

    [Theory]
    [InlineData("mqtt://")]
    [InlineData("mqtt://host")]
    [InlineData("mqtt://host/")]
    [InlineData("mqtt:///topic")]
    [InlineData("mqtt://host:0/t")]
    [InlineData("mqtt://host:70000/t")]
    [InlineData("mqtt://:1883/t")]
    [InlineData("/dev/ttyUSB0")]
    public void Anything_else_is_none(string text) => Assert.Null(MqttAddress.Read(text));

    private MqttProbe Probe(string topic) => new(new MqttAddress("127.0.0.1", _port, topic), TimeProvider.System, _mail);

    private async Task Start()
    {
        _broker?.Dispose();
        var options = new MqttServerOptionsBuilder()
            .WithDefaultEndpoint().WithDefaultEndpointBoundIPAddress(IPAddress.Loopback).WithDefaultEndpointBoundIPV6Address(IPAddress.None).WithDefaultEndpointPort(_port);
        _broker = new MqttServerFactory().CreateMqttServer(options.Build());
        _broker.ClientSubscribedTopicAsync += e =>
        {
            _subscribed.Add(e.TopicFilter.Topic);
            return Task.CompletedTask;
        };
        await _broker.StartAsync();
    }

    private Task Publish(string topic, string payload) => _broker!.InjectApplicationMessage(
        new InjectedMqttApplicationMessage(new MqttApplicationMessageBuilder().WithTopic(topic).WithPayload(payload).Build()) { SenderClientId = "test" },
        TestContext.Current.CancellationToken);

    private string Subscribed()
    {
        Assert.True(_subscribed.TryTake(out var topic, Patience), "nobody has subscribed");
        return topic;
    }

    private T Next<T>()
        where T : Input
    {
        Assert.True(_heard.TryTake(out var input, Patience), "nothing has come");
        return Assert.IsType<T>(input);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
