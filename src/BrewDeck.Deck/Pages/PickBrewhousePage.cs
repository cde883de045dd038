using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Which brewhouse today.</summary>
internal sealed class PickBrewhousePage(Shell shell) : ProfilePage<Brewhouse>(shell, shell.Ports.Profiles.Brewhouses)
{
    protected override string Title => Shell.Notation.Text("Which brewhouse?");

    /// <summary>With one brewhouse there is nothing to choose.</summary>
    public static void Enter(Shell shell) => shell.Try(() =>
    {
        var entries = shell.Ports.Profiles.Brewhouses();
        if (entries.Count == 0)
            shell.Say(shell.Notation.Text("There is no brewhouse file in the profiles folder."), Tone.Warning);
        else if (entries.Count == 1)
            PickRecipePage.Enter(shell, shell.Ports.Profiles.Brewhouse(entries[0]));
        else
            shell.Push(new PickBrewhousePage(shell));
    });

    protected override Brewhouse Load(ProfileEntry entry) => Shell.Ports.Profiles.Brewhouse(entry);

    protected override void Chosen(Brewhouse brewhouse) => PickRecipePage.Enter(Shell, brewhouse);

    protected override ImmutableArray<Line> Details(Brewhouse brewhouse) => BrewhouseWords.Of(brewhouse, Shell.Notation);
}
