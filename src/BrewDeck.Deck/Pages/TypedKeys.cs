using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>Acts that need something typed: a note, and the words that skip a step or give up the batch.</summary>
internal sealed class TypedKeys(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    public void Ask(Command command, DateTimeOffset now)
    {
        var focus = day.Focus(now);
        if (command == Command.Note)
            Note();
        else if (focus.Act == FocusAct.None)
            shell.Say(shell.Notation.Text("The day is over; nothing is left to skip or to give up."), Tone.Warning);
        else if (command == Command.Skip)
            Word(shell.Notation.Text("skip"), shell.Notation.Text($"Skip: {page.Moment(now).Title(focus.StepId)}"), needsWhy: true, why => new RunCommand.Skip(focus.StepId, why));
        else
            Word(shell.Notation.Text("abort"), shell.Notation.Text("Give up this batch"), needsWhy: false, why => new RunCommand.Abort(why));
    }

    private void Note() => page.Ask(new EntryAsk(page, shell.Notation.Text("Note"), "", _ => Line.Of(shell.Notation.Text("Goes into the log with the time."), Tone.Muted), (text, at) =>
    {
        if (text.Trim().Length == 0)
            return shell.Notation.Text("Type the note, or Esc.");
        acts.Do(new RunCommand.Write(text.Trim()), at);
        return null;
    }));

    private void Word(string word, string question, bool needsWhy, Func<string, RunCommand> command) =>
        page.Ask(new EntryAsk(page, question, "", _ => Line.Of(needsWhy ? shell.Notation.Text($"Type {word} and why, such as: {word} no time for it") : shell.Notation.Text($"Type {word}, and after it why, if you like."), Tone.Muted), (text, at) =>
        {
            var typed = text.Trim();
            if (!typed.Equals(word, StringComparison.OrdinalIgnoreCase) && !typed.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase))
                return shell.Notation.Text($"Type the word {word} to do it, or Esc.");
            var why = typed[word.Length..].Trim();
            if (needsWhy && why.Length == 0)
                return shell.Notation.Text($"Say why after the word {word}.");
            acts.Do(command(why), at);
            return null;
        }));
}
