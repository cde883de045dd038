using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;
using CsCheck;

namespace BrewDeck.Tests.Deck;

public class SessionFuzzTests
{
    private const string Letters = " 0123456789tunrhpwsx?q+-.o/dry#";

    private static readonly string[] Lines =
        ["65.4", "abort", "skip it", "1.045@40", "11bx", "", "\u0000", "9999999999", "41@77", "note"];

    private static readonly Gen<Input> AnyInput = Gen.Frequency(
        (20, Gen.Int[0, Letters.Length - 1].Select(i => (Input)new Input.Key(Letters[i] == ' ' ? new KeyStroke(KeyName.Space) : KeyStroke.Of(Letters[i])))),
        (10, Gen.Enum<KeyName>().Select(n => (Input)new Input.Key(new KeyStroke(n, 'z')))),
        (3, Gen.Int[0, Lines.Length - 1].Select(i => (Input)new Input.Submitted(Lines[i]))),
        (2, Gen.String.Select(t => (Input)new Input.Typed(t))),
        (4, Gen.Const((Input)new Input.Tick())),
        (4, Gen.Select(Gen.Enum<ReadingKind>(), Gen.Int[0, 2].Select(i => new[] { "tun", "kettle", "nowhere" }[i]), Gen.Double[-1e6, 1e6], Gen.Double[0, 1e6])
            .Select((kind, vessel, value, ageS) => (Input)new Input.Offered([new ProbeValue(kind, vessel, value, TimeSpan.FromSeconds(ageS))]))),
        (1, Gen.Const((Input)new Input.ProbeGone())),
        (1, Gen.Select(Gen.Int[-5, 300], Gen.Int[-5, 100]).Select(s => (Input)new Input.Resized(s.Item1, s.Item2))));

    [Fact]
    public void Any_key_at_any_time_throws_nothing_and_the_log_is_the_truth() =>
        Gen.Select(AnyInput, Gen.Double[0, 400]).Array[20, 250].Sample(
            story =>
            {
                var brewer = new Player();
                brewer.Begin();
                foreach (var (input, seconds) in story)
                {
                    brewer.Now = brewer.Now.AddSeconds(seconds);
                    brewer.Send(input);
                    Assert.NotEmpty(brewer.Screen.Keys);
                }
                var folded = RunFold.Of(brewer.Store[1]);
                Assert.Equal(
                    folded.Steps.Select(s => (s.Spec.Id, s.Status, s.StartedMs, s.EndedMs)),
                    brewer.Session.State!.Steps.Select(s => (s.Spec.Id, s.Status, s.StartedMs, s.EndedMs)));
            },
            iter: 25, threads: 1);

    [Fact]
    public void Only_the_big_key_brews_a_whole_day() // a brewer who strikes nothing else, every half minute
    {
        var brewer = new Player();
        brewer.Begin();

        for (var i = 0; i < 3000 && brewer.Session.State!.Status != RunStatus.Complete; i++)
            brewer.Strike(new KeyStroke(KeyName.Space), 30);

        Assert.Equal(RunStatus.Complete, brewer.Session.State!.Status);
    }
}
