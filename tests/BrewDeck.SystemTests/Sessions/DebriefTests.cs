using BrewDeck.Commands;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Simulator.Rehearsing;
using static BrewDeck.SystemTests.Sessions.AtTheKeys;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A day with two mishaps that a trainee meets with makeshifts, looked back at.</summary>
public sealed class DebriefTests
{
    [Fact]
    public void The_debrief_of_a_scripted_day_is_as_it_was()
    {
        using var at = new AtTheRehearsal(new Mishap(MishapKind.WrongWeighIn, Severity.Severe), new Mishap(MishapKind.TrippedCircuit, Severity.Plain));
        at.UntilItShows().Strike("m").Strike(Down).Strike(Enter);
        // power on the wet plug stands last, behind leaving it
        at.UntilItShows().Strike("m").Strike(Down).Strike(Down).Strike(Enter);
        at.UntilItShows().Strike("m").Strike(Enter);
        at.Until(() => at.State.Status == RunStatus.Complete);
        at.Strike(Space);
        Assert.Equal("Debrief of batch 1", Assert.IsType<TextScreen>(at.Screen).Title);

        var debrief = Debriefing.Of(at.Events);
        Assert.NotNull(debrief);
        Assert.Equal(HandAct.AddRestOfGrist, debrief.Mishaps[0].Best!.Answer.Act);
        Assert.Equal([HandAct.LeaveIt, HandAct.ResetBreaker], debrief.Mishaps.Select(m => m.Chosen!.Answer.Act!.Value));
        Assert.InRange(debrief.Mishaps[0].Best!.Gives.OriginalGravitySg - debrief.Mishaps[0].Chosen!.Gives.OriginalGravitySg, 0.004, 0.015);
        Assert.Equal(at.Truth.FermenterL, debrief.Result.FermenterL, 0.02);
        SessionGoldens.Same("debrief", string.Join('\n', DebriefWords.Lines(debrief, RunFold.Of(at.Events), Forecasts.At(RunFold.Of(at.Events), at.Events[^1].AtMs).Outlook, Notation.Metric)) + "\n" + DebriefJson.Of(1, debrief) + "\n");
    }

    [Fact]
    public void A_real_day_has_no_debrief()
    {
        using var at = new AtTheKeys();
        new BrewerByKeys(at, Space, BrewerByKeys.Decimal).Begin(ImportedRecipe.Name, at.DownTo, () => at.Strike(Space, null), Space);

        Assert.Null(Debriefing.Of(at.Events));
    }
}
