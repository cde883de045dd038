using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Probes;

/// <summary>Hears what the host says of a probe. Trouble with it is a note that waits until nothing else is being said.</summary>
internal sealed class ProbeEar(Shell shell)
{
    private static readonly string[] OtherPlaces = [Places.Fermenter, Places.Grain, Places.Source, Places.Room];

    private readonly Queue<string> _notes = new();
    private bool _saidUnread;
    private bool _saidUnknown;

    public void Hear(Input input)
    {
        if (input is Input.Offered offered)
            Hear(offered);
        else if (!_notes.Contains(ProbeWords.Gone(shell.Notation)))
            _notes.Enqueue(ProbeWords.Gone(shell.Notation));
    }

    public void Say()
    {
        if (shell.Notice is null && _notes.TryDequeue(out var note))
            shell.Say(note, Tone.Muted);
    }

    private void Hear(Input.Offered offered)
    {
        foreach (var value in offered.Values)
            shell.Probe.Take(value);
        shell.Probe.Unread = offered.Unread;
        if (!_saidUnread && offered.Why is { } why)
        {
            _notes.Enqueue(ProbeWords.Unread(why, shell.Notation));
            _saidUnread = true;
        }
        if (!_saidUnknown && shell.Day?.Plan.Brewhouse is { } house && Unknown(offered, house) is { } id)
        {
            _notes.Enqueue(ProbeWords.UnknownVessel(id, house, shell.Notation));
            _saidUnknown = true;
        }
    }

    private static string? Unknown(Input.Offered offered, Brewhouse house) =>
        offered.Values.Select(v => v.Vessel).FirstOrDefault(id => !OtherPlaces.Contains(id) && house.Vessels.All(v => v.Id != id));
}
