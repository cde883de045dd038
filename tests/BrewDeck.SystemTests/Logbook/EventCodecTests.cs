using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using CsCheck;

namespace BrewDeck.SystemTests.Logbook;

public sealed class EventCodecTests
{
    [Fact]
    public void AnEventThatDoesNotFitIsNamedInOneShortLine()
    {
        var e = Assert.Throws<FormatException>(() => EventCodec.Decode(Encoding.UTF8.GetBytes($$$"""{"kind":"step_finished","at_ms":1,"step":{"{{{new string('x', 3_000)}}}\u0007":1}}""")));
        Assert.StartsWith("the event \"step_finished\" does not fit at $", e.Message, StringComparison.Ordinal);
        Assert.True(e.Message.Length < 200 && !e.Message.Any(char.IsControl), e.Message);
    }

    [Fact]
    public void EveryKindComesBackAsItWas() => AnyEvent.All.Sample(ComesBack, iter: 2_000);

    [Fact]
    public void TheGeneratorMakesEveryKind() =>
        Assert.Equal(EventKinds.Known.Order(), AnyEvent.Kinds.Select(g => EventKinds.Of(g.Single())).Order());

    [Fact]
    public void APlanOf45StepsStaysBelow60Kilobytes()
    {
        var line = EventCodec.Encode(Days.Opened(steps: 45));
        TestContext.Current.TestOutputHelper?.WriteLine($"batch_opened with 45 steps: {line.Length} bytes");
        Assert.InRange(line.Length, 10_000, 60_000);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Räucher \u202e\u001b[31m\r\n\"=1+1\"\0")]
    [InlineData("\ud83c\udf7a")]
    public void ALineIsAsciiWithoutControlCharacters(string text)
    {
        var line = EventCodec.Encode(new NoteWritten(1, text));
        Assert.All(line, b => Assert.InRange(b, 0x20, 0x7e));
        Assert.Equal(text, Assert.IsType<NoteWritten>(EventCodec.Decode(line)).Text);
    }

    [Theory]
    [InlineData("""{"kind":"beer_drunk","at_ms":1}""", "beer_drunk")]
    [InlineData("""{"kind":"step_started","at_ms":1}""", "step_started")]
    [InlineData("""{"kind":"undone","at_ms":"soon","seq":1}""", "$.at_ms")]
    [InlineData("""{"kind":"remedy_chosen","at_ms":1,"remedy":{"kind":3},"moved":[]}""", "remedy_chosen")]
    [InlineData("""{"at_ms":1}""", "{\"kind\":")]
    [InlineData("""{"kind":7}""", "{\"kind\":")]
    [InlineData("null", "null")]
    [InlineData("", "{\"kind\":")]
    [InlineData("{\"kind\":\"note_written\"", "note_written")]
    public void WhatIsNoEventIsSaidInOneLine(string line, string names)
    {
        var e = Assert.Throws<FormatException>(() => EventCodec.Decode(Encoding.UTF8.GetBytes(line)));
        Assert.Contains(names, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', e.Message);
    }

    [Fact]
    public void AHopDoseWithoutItsGravityIsOfAnOlderRecord()
    {
        var line = Encoding.UTF8.GetString(EventCodec.Encode(Days.Opened()));
        var older = System.Text.RegularExpressions.Regex.Replace(line, """(\["Cascade"(,[^,\]]+){3}),[^,\]]+\]""", "$1]");
        Assert.NotEqual(line, older);
        var doses = Assert.IsType<BatchOpened>(EventCodec.Decode(Encoding.UTF8.GetBytes(older))).Plan.Steps.SelectMany(s => s.After.Hops);
        Assert.All(doses.Where(d => d.Name == "Cascade"), d => Assert.Equal(0, d.GravitySg));
    }

    [Fact]
    public void ARemedyThatBoilsNowhereElseIsOfAnOlderRecord()
    {
        var chosen = new RemedyChosen(1, new Remedy(RemedyKind.LeaveIt, "kettle", 0, 0, [], "", [], []) { Partly = true }, []);
        var fields = System.Text.Json.Nodes.JsonNode.Parse(EventCodec.Encode(chosen))!.AsObject();
        Assert.All(new[] { "no_mash_out", "ahead" }, name => Assert.True(fields["remedy"]!.AsObject().Remove(name), name));
        var older = Assert.IsType<RemedyChosen>(EventCodec.Decode(Encoding.UTF8.GetBytes(fields.ToJsonString()))).Remedy;
        Assert.Equal((true, false, false), (older.Partly, older.NoMashOut, older.Ahead));
        Assert.Null(older.BoilsIn);
        Assert.Null(older.Later);
        Assert.Empty(older.Added);
    }

    [Fact]
    public void AVesselThatIsNotHeldStaysSo()
    {
        var opened = Assert.IsType<BatchOpened>(EventCodec.Decode(EventCodec.Encode(Days.Opened())));
        Assert.Equal([true, true, false, false], opened.Plan.Start.Vessels.Select(v => v.HoldsTemperature));
        Assert.Equal(0, opened.Plan.Choices.SourceWaterC);
    }

    [Fact]
    public void ADamagedVesselStateIsRefused()
    {
        var line = Encoding.ASCII.GetString(EventCodec.Encode(Days.Opened()));
        var cut = line.Replace("[0,0,0,18,0,0,0,0,null]", "[0,0,0,18,0,0,0,0]", StringComparison.Ordinal);
        Assert.NotEqual(line, cut);
        Assert.Throws<FormatException>(() => EventCodec.Decode(Encoding.ASCII.GetBytes(cut)));
    }

    private static void ComesBack(RunEvent happened)
    {
        var line = EventCodec.Encode(happened);
        var back = EventCodec.Decode(line);
        Assert.Null(Same.Difference(happened, back));
        Assert.Equal(line, EventCodec.Encode(back));
    }
}
