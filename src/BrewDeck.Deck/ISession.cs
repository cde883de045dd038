using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck;

/// <summary>What a terminal drives: inputs go in, a screen comes out. Called from one thread only.</summary>
public interface ISession
{
    /// <summary>What is to be seen now; changes only within <see cref="Receive"/>.</summary>
    Screen Screen { get; }

    /// <param name="input">What happened.</param>
    /// <param name="now">When, with the local offset; may step back when the wall clock is set.</param>
    void Receive(Input input, DateTimeOffset now);

    /// <summary>When <see cref="Input.Tick"/> is wanted next; null: the screen stays true until a key is struck.</summary>
    DateTimeOffset? NextTick { get; }

    /// <summary>The program is to be left.</summary>
    bool Ended { get; }

    /// <summary>The last <see cref="Receive"/> wants the bell rung once.</summary>
    bool BellWanted { get; }
}
