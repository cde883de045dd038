using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

internal sealed class RehearsalKnobs : IRehearsalControls
{
    public double Speed { get; set; } = 60;

    public bool Paused { get; set; }

    public bool HandsOn { get; set; }

    public DateTimeOffset? Wall { get; set; }

    public IReadOnlyList<Sign> Signs { get; set; } = [];
}
