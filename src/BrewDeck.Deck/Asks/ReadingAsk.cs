using System.Collections.Immutable;
using System.Text.RegularExpressions;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Asks;

/// <summary>The reading entry: the line that is typed, and the place that it is for.</summary>
/// <param name="expects">What a reading there will be held against; null: nothing.</param>
/// <param name="look">What the instrument of a rehearsal shows; null on a real day: the brewer has the instrument.</param>
/// <param name="probe">What a probe offers for the place at the time of the last input; null: nothing.</param>
/// <param name="take">Takes the reading; the question is closed before it is called.</param>
internal sealed partial class ReadingAsk(
    DeckPage page, ImmutableArray<ReadingPlace> places, ReadingTyping typing, Notation notation,
    Func<ReadingPlace, double?> expects, Func<ReadingPlace, Shown?>? look, Func<ReadingPlace, ProbeOffer?> probe, Action<Reading, ReadingAsk, DateTimeOffset> take) : Ask
{
    private readonly Dictionary<ReadingPlace, Shown?> _shown = [];
    private readonly Dictionary<ReadingPlace, double?> _expected = [];
    private int _at;
    private string _text = "";
    private string _initial = "";
    private Line? _fault;

    public override KeyContext Context => KeyContext.Entry | KeyContext.Kinds;

    private ReadingPlace Place => places[_at];

    /// <summary>What the text is for: 1.046 is no level of a kettle, but its gravity, where one is asked for too.</summary>
    private ReadingPlace Meant(string text) => KindTyped(text.Trim()) is { } kind && kind != Place.Kind
        && places.FirstOrDefault(p => p.Kind == kind && p.Vessel == Place.Vessel) is { } meant
            ? meant
            : Place;

    /// <summary>A unit that only one kind has, or a number that a level does not have; null: as asked.</summary>
    private ReadingKind? KindTyped(string text) =>
        Place.Kind != ReadingKind.Temperature && TemperatureTyped().IsMatch(text) ? ReadingKind.Temperature
        : Place.Kind == ReadingKind.Volume && GravityTyped().IsMatch(text) ? ReadingKind.Gravity
        : Place.Kind != ReadingKind.Volume && VolumeTyped().IsMatch(text) ? ReadingKind.Volume
        : null;

    [GeneratedRegex(@"^[01][.,]\d{3}(@\d+)?$")]
    private static partial Regex GravityTyped();

    [GeneratedRegex(@"^\d+([.,]\d+)?\s*°?[cf]$", RegexOptions.IgnoreCase)]
    private static partial Regex TemperatureTyped();

    [GeneratedRegex(@"^\d+([.,]\d+)?\s*(l|gal)$", RegexOptions.IgnoreCase)]
    private static partial Regex VolumeTyped();

    public ReadingAsk With(string text)
    {
        (_text, _initial, _fault) = (text, text, null);
        return this;
    }

    public ReadingAsk For(int place)
    {
        _at = place;
        return this;
    }

    public override Overlay Show() =>
        new EntryOverlay(ReadingWords.Ask(Place.Kind, Place.Vessel, page.Brewhouse, notation), _initial, Hint(), _fault);

    public override void Typed(string text) => (_text, _fault) = (text, null);

    public override void Submitted(string text, DateTimeOffset now)
    {
        _text = text;
        var (reading, reason) = Read(text);
        if (reading is null)
        {
            _fault = Line.Of(reason, Tone.Warning);
            return;
        }
        page.Close(this);
        take(reading, this, now);
    }

    /// <summary>An empty line takes what the probe offers, if that may be believed.</summary>
    private (Reading? Reading, string Reason) Read(string text)
    {
        if (text.Trim().Length > 0 || probe(Place) is not { } offer)
            return (typing.Read(Meant(text), text, out var reason), reason);
        return offer.State == ProbeState.Fresh ? (offer.Reading, "") : (null, ProbeWords.NotTaken(offer.State, notation));
    }

    public override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.NextKind:
                Move(1);
                break;
            case Command.PreviousKind:
                Move(-1);
                break;
            case Command.Back:
                page.Close(this);
                break;
        }
    }

    // what was typed stays: only the place was wrong
    private void Move(int by)
    {
        _at = (_at + by + places.Length) % places.Length;
        (_initial, _fault) = (_text, null);
    }

    private Line Hint()
    {
        var plan = Dial() + Probed() + (Expected() is { } expected ? notation.Text($"expected {ReadingWords.Value(Place.Kind, expected, notation)} · ") : "");
        if (_text.Trim().Length > 0 && typing.Read(Meant(_text), _text, out _) is { } reading)
            return Line.Of(notation.Text($"{plan}understood as {Understood(reading)}"));
        if (_text.Trim().Length > 0)
            return Line.Of(notation.Text($"{plan}not understood yet · such as {ReadingWords.HowToType(Place.Kind, page.HasDepth(Place.Vessel), notation)}"), Tone.Warning);
        return Line.Of(notation.Text($"{plan}such as {ReadingWords.HowToType(Place.Kind, page.HasDepth(Place.Vessel), notation)}"), Tone.Muted);
    }

    /// <summary>Reckoned once for each place: each key that is typed shows it.</summary>
    private double? Expected()
    {
        if (!_expected.TryGetValue(Place, out var expected))
            _expected[Place] = expected = expects(Place);
        return expected;
    }

    /// <summary>Looked at once: a second look would be a second sample.</summary>
    private string Dial()
    {
        if (look is null)
            return "";
        if (!_shown.TryGetValue(Place, out var shown))
            _shown[Place] = shown = look(Place);
        return shown is null ? "" : ReadingWords.Shown(Place.Kind, shown, notation) + " · ";
    }

    private string Probed() =>
        probe(Place) is { } offer ? ProbeWords.Offer(offer, _text.Trim().Length == 0, notation) + " · " : "";

    private string Understood(Reading reading)
    {
        var value = ReadingWords.Value(reading.Kind, reading.Value, notation);
        if (reading.Kind != Place.Kind)
            return $"{Names.Kind(reading.Kind, notation)} {ReadingWords.Named(reading.Kind, reading.Value, notation)}";
        if (typing.IsOfHotSample(reading))
            return notation.Text($"{value}, but so hot it reads poorly: cool the sample");
        return reading.AtC is { } c ? notation.Text($"{value} at {notation.Temp(c)}") : value;
    }
}
