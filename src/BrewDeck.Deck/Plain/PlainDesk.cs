using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Plain;

/// <summary>The deck as a talk in lines, over the same session: a line goes in, lines come out. Time comes with each call.</summary>
public sealed class PlainDesk(ISession session, Notation notation)
{
    private Screen _said = session.Screen;
    private KeyContext _where = session.Where;

    /// <summary>What is said at the beginning.</summary>
    public IReadOnlyList<string> Begin() => [.. PlainSpeech.Whole(session.Screen, notation), PlainWords.Said(session.Where, notation)];

    /// <summary>Takes a typed line.</summary>
    public IReadOnlyList<string> Line(string line, DateTimeOffset now)
    {
        Rang = false;
        if (line.Trim().Length == 0 && !session.Where.HasFlag(KeyContext.Entry))
            return Begin();
        if ((session.Where & (KeyContext.Choice | KeyContext.Entry)) != 0 && PlainWords.AsksForHelp(line, notation))
            return Begin();
        if (PlainWords.Of(line, session.Screen, session.Where, notation) is not { } inputs)
            return session.Where.HasFlag(KeyContext.Choice)
                ? [notation.Text($"A question is open, and nothing in it is called \"{line.Trim()}\". Answer with the number of a row; back leaves it as it was.")]
                : [notation.Text($"Nothing here is called \"{line.Trim()}\"."), PlainWords.Said(session.Where, notation)];
        foreach (var input in inputs)
            session.Receive(input, now);
        return [.. Bell(), .. Said(PlainSpeech.After(session.Screen, _said, notation))];
    }

    /// <summary>Time has passed.</summary>
    public IReadOnlyList<string> Tick(DateTimeOffset now) => Meanwhile(new Input.Tick(), now);

    /// <summary>Takes what did not come from the brewer.</summary>
    public IReadOnlyList<string> Meanwhile(Input input, DateTimeOffset now)
    {
        session.Receive(input, now);
        return [.. Bell(), .. Said(PlainSpeech.Meanwhile(session.Screen, _said, notation))];
    }

    private IReadOnlyList<string> Said(IEnumerable<string> lines)
    {
        List<string> said = [.. lines];
        // who typed what a question does not take looks for the way out of it
        if ((session.Where != _where || session.Screen.Overlay is EntryOverlay { Fault: not null }) && said.Count > 0 && !session.Ended)
            said.Add(PlainWords.Said(session.Where, notation));
        (_said, _where) = (session.Screen, session.Where);
        return said;
    }

    /// <summary>Whether the bell rang with what was said last.</summary>
    public bool Rang { get; private set; }

    /// <summary>What the bell rings for, in words.</summary>
    private string[] Bell() => (Rang = session.TakeBell() && session.Title.Length > 0) ? [notation.Text($"Bell: {session.Title.TrimStart('!', ' ')}.")] : [];
}
