using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Plain;

/// <summary>The deck as a talk in lines, over the same session: a line goes in, lines come out. Time comes with each call.</summary>
public sealed class PlainDesk(ISession session)
{
    private Screen _said = session.Screen;
    private KeyContext _where = session.Where;

    /// <summary>What is said at the beginning.</summary>
    public IReadOnlyList<string> Begin() => [.. PlainSpeech.Whole(session.Screen), PlainWords.Said(session.Where)];

    /// <summary>Takes a typed line.</summary>
    public IReadOnlyList<string> Line(string line, DateTimeOffset now)
    {
        if (line.Trim().Length == 0 && !session.Where.HasFlag(KeyContext.Entry))
            return Begin();
        if (PlainWords.Of(line, session.Screen, session.Where) is not { } inputs)
            return [$"Nothing here is called \"{line.Trim()}\".", PlainWords.Said(session.Where)];
        foreach (var input in inputs)
            session.Receive(input, now);
        return [.. Bell(), .. Said(PlainSpeech.After(session.Screen, _said))];
    }

    /// <summary>Time has passed.</summary>
    public IReadOnlyList<string> Tick(DateTimeOffset now) => Meanwhile(new Input.Tick(), now);

    /// <summary>Takes what did not come from the brewer.</summary>
    public IReadOnlyList<string> Meanwhile(Input input, DateTimeOffset now)
    {
        session.Receive(input, now);
        return [.. Bell(), .. Said(PlainSpeech.Meanwhile(session.Screen, _said))];
    }

    private IReadOnlyList<string> Said(IEnumerable<string> lines)
    {
        List<string> said = [.. lines];
        if (session.Where != _where && !session.Ended)
            said.Add(PlainWords.Said(session.Where));
        (_said, _where) = (session.Screen, session.Where);
        return said;
    }

    /// <summary>What the bell rings for, in words.</summary>
    private string[] Bell() => session.TakeBell() && session.Title.Length > 0 ? [$"Bell: {session.Title.TrimStart('!', ' ')}."] : [];
}
