using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Probes;

namespace BrewDeck.Deck.Wording;

/// <summary>A probe in words.</summary>
internal static class ProbeWords
{
    public static string Gone(Notation notation) => notation.Text("The probe is not there; readings are typed until it comes back.");

    /// <summary>"probe 66.4 °C: enter takes it", "probe 66.4 °C, stale (3 lines not read)".</summary>
    /// <param name="empty">Nothing is typed: Enter would take it.</param>
    public static string Offer(ProbeOffer offer, bool empty, Notation notation)
    {
        var value = notation.Text("probe ") + ReadingWords.Value(offer.Reading.Kind, offer.Reading.Value, notation);
        return offer.State == ProbeState.Fresh ? value + (empty ? notation.Text(": enter takes it") : "") : $"{value}, {State(offer.State, notation)}{Count(offer.Unread, notation)}";
    }

    private static string Count(int unread, Notation notation) => unread switch
    {
        0 => "",
        1 => notation.Text(" (1 line not read)"),
        _ => notation.Text($" ({notation.Number(unread, "0")} lines not read)"),
    };

    /// <summary>Why Enter does not take it.</summary>
    public static string NotTaken(ProbeState state, Notation notation) => state switch
    {
        ProbeState.Stale => notation.Text("The probe's value is stale, older than a minute: type a value."),
        ProbeState.Noisy => notation.Text("The probe is noisy, it went to and fro within the last minute: type a value."),
        _ => notation.Text("The probe's value is absurd here: look at the probe, and type a value."),
    };

    public static string Unread(string why, Notation notation) =>
        notation.Text($$"""A line of the probe is passed over: {{why}}. Right is {"vessel":"tun","temperature_c":66.4}.""");

    public static string UnknownVessel(string id, Brewhouse brewhouse, Notation notation) =>
        notation.Text($"The probe measures \"{id}\", which is no vessel here; these are {string.Join(", ", brewhouse.Vessels.Select(v => v.Id))}.");

    private static string State(ProbeState state, Notation notation) => state switch
    {
        ProbeState.Stale => notation.Text("stale"),
        ProbeState.Noisy => notation.Text("noisy"),
        _ => notation.Text("absurd"),
    };
}
