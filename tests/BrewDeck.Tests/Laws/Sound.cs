using BrewDeck.Core.Running;

namespace BrewDeck.Tests.Laws;

/// <summary>Whatever has happened, a state must answer every question that the deck asks.</summary>
internal static class Sound
{
    public static void Check(RunState state, long nowMs)
    {
        var forecast = Forecasts.At(state, nowMs);
        var focus = RunFocus.Of(state, forecast, nowMs);
        if (focus.Act != FocusAct.None)
            Assert.NotNull(state.Step(focus.StepId));
        foreach (var remedy in Remedies.For(state, nowMs))
            Assert.True(double.IsFinite(remedy.Amount) && double.IsFinite(remedy.Minutes), remedy.ToString());
        foreach (var v in state.Live!.Plant.Vessels.Concat(forecast.Now.Vessels))
        {
            Assert.True(v is { WaterKg: >= -1e-6, ExtractKg: >= -1e-6, GrainDryKg: >= -1e-6 }, v.ToString());
            Assert.True(double.IsFinite(v.WaterKg + v.ExtractKg + v.TempC + v.AtS + v.GrainDryKg + v.UndissolvedKg + v.Washed), v.ToString());
            Assert.InRange(v.TempC, -25, 125);
        }
        var outlook = forecast.Outlook;
        foreach (var figure in new[] { outlook.PreBoilL, outlook.PostBoilL, outlook.FermenterL, outlook.OriginalGravitySg, outlook.BitternessIbu, outlook.ColourEbc, outlook.PitchC, outlook.FinishMs })
            Assert.True(double.IsFinite(figure.P50), outlook.ToString());
    }
}
