using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.SetUp;

namespace BrewDeck.Deck.Pages;

/// <summary>A trial with water: its readings are typed as in a sum, and its result is taken as the answer.</summary>
/// <param name="texts">Readings typed before; changed as they are typed.</param>
/// <param name="read">Called after each reading that is typed.</param>
/// <param name="taken">Told the answers once they are taken.</param>
internal sealed class TrialPage(Shell shell, SetUpTrial trial, Dictionary<string, string> texts, Action read, Action<TrialResult> taken)
    : SumPage(shell, trial.Sum, texts)
{
    protected override void Read(SumInput input) => read();

    protected override int Count => trial.Sum.Inputs.Length + 1;

    protected override IEnumerable<Row> MoreRows =>
        [new Row([Results is null ? Shell.Notation.Text("Take the result (readings are missing)") : Shell.Notation.Text("Take the result"), ""], Results is null ? Tone.Muted : Tone.Strong)];

    protected override void Change(int row, string typed, DateTimeOffset now)
    {
        if (row < trial.Sum.Inputs.Length)
            base.Change(row, typed, now);
        else if (Results is not { } results)
            Shell.Say(Shell.Notation.Text("A reading is still missing."), Tone.Warning);
        else if (trial.Gives(results) is { Answers.IsEmpty: false } result)
            Take(result);
        else
            Shell.Say(Shell.Notation.Text(trial.Gives(results).Trouble), Tone.Warning);
    }

    private void Take(TrialResult result)
    {
        Shell.Pop();
        taken(result);
    }
}
