using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Logbook;
using BrewDeck.Rehearsals;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.Commands;

/// <summary>Pictures of a brewhouse and of a recipe being made, by keys as a brewer strikes them.</summary>
internal sealed class MakingStills
{
    private static readonly KeyStroke Enter = new(KeyName.Enter), Down = new(KeyName.Down), Up = new(KeyName.Up), Escape = new(KeyName.Escape);
    private readonly Session _session;
    private DateTimeOffset _now;

    private MakingStills(Session session, DateTimeOffset now) => (_session, _now) = (session, now);

    public static IEnumerable<(string Name, StillScreen Still)> Of(Workplace place, DateTimeOffset now)
    {
        using var journal = Journal.Open(new MemoryDisk(), Workplace.StatusOf);
        var ports = new SessionPorts(journal, place.Profiles(), Writer: new Nowhere());
        var making = new MakingStills(new Session(ports, new SessionSettings { ProgramVersion = Workplace.Version }, now), now);
        yield return ("opening-80x24", making.Still(80, 24));
        making.Pick("New brewhouse");
        making.Until("How many watts heat the kettle?");
        yield return ("set-up-80x24", making.Still(80, 24));
        making.Until("How much of the kettle's heat arrives?");
        making.Keys(Down, Down, Enter);
        foreach (var reading in (string[])["42 L", "12 °C", "71 °C", "78 min"])
            making.Line(reading);
        yield return ("trial-80x24", making.Still(80, 24));
        making.Keys(Escape, Up, Up);
        making.Until("My brewhouse: write it?");
        yield return ("set-up-review-120x40", making.Still(120, 40));
        making.Keys(Enter);
        making.Pick("Recipes");
        making.MoveTo("Quayside Amber");
        making.Keys(KeyStroke.Of('e'));
        making.MoveTo("pale ale malt");
        yield return ("recipe-80x24", making.Still(80, 24));
        making.Line("7.2 kg");
        yield return ("recipe-120x40", making.Still(120, 40));
    }

    private void Keys(params ReadOnlySpan<KeyStroke> strokes)
    {
        foreach (var stroke in strokes)
            Send(new Input.Key(stroke));
    }

    private void Line(string text)
    {
        Keys(KeyStroke.Of(text[0]));
        Send(new Input.Submitted(text));
    }

    private void Send(Input input)
    {
        _now = _now.AddSeconds(2);
        _session.Receive(input, _now);
    }

    private void Pick(string row)
    {
        MoveTo(row);
        Keys(Enter);
    }

    private void MoveTo(string row)
    {
        var list = (ListScreen)_session.Screen;
        var at = list.Rows.ToList().FindIndex(r => r.Cells[0].StartsWith(row, StringComparison.Ordinal));
        for (var i = list.Selected; i != at; i += Math.Sign(at - i))
            Keys(at > i ? Down : Up);
    }

    private void Until(string title)
    {
        const int most = 60;
        for (var i = 0; i < most && _session.Screen.Title != title; i++)
            Keys(Enter);
    }

    private StillScreen Still(int columns, int rows)
    {
        _session.Receive(new Input.Resized(columns, rows), _now);
        return StillScreen.Of(_session.Screen, columns, rows);
    }

    /// <summary>Pictures leave no files.</summary>
    private sealed class Nowhere : IProfileWriter
    {
        public ProfileEntry Write(Brewhouse brewhouse, IReadOnlyDictionary<string, string> notes, DateTimeOffset now) => new(brewhouse.Name, "brewhouses/my-brewhouse.toml");

        public ProfileEntry Write(Recipe recipe, ProfileEntry? entry, DateTimeOffset now) => new(recipe.Name, "recipes/recipe.toml");

        public ProfileEntry Write(WaterSupply water, ProfileEntry? entry, DateTimeOffset now) => new(water.Source.Name, "waters/water.toml");

        public IReadOnlyList<string> Draft(string name) => [];

        public void KeepDraft(string name, IReadOnlyList<string> lines)
        {
        }
    }
}
