using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Ways back to plan, with what they cost and what they give.</summary>
public static class RemedyWords
{
    public static string Title(Remedy remedy, Brewhouse brewhouse, Notation notation) => remedy.Kind switch
    {
        RemedyKind.LeaveIt => "Leave it",
        RemedyKind.HeatMash => $"Heat the mash for {Durations.Words(remedy.Amount * 60)}",
        RemedyKind.AddHotWater => $"Add {notation.Volume(remedy.Amount)} boiling water to {Names.The(brewhouse, remedy.Vessel)}",
        RemedyKind.AddColdWater => $"Add {notation.Volume(remedy.Amount)} cold water to {Names.The(brewhouse, remedy.Vessel)}",
        RemedyKind.BoilLonger => $"Boil {Durations.Words(remedy.Amount * 60)} longer",
        RemedyKind.BoilShorter => $"Boil {Durations.Words(remedy.Amount * 60)} less",
        RemedyKind.Dilute => $"Dilute with {notation.Volume(remedy.Amount)} water",
        RemedyKind.AddExtract => $"Add {notation.Mass(remedy.Amount)} dried malt extract",
        _ => Names.Plainly(remedy.Kind.ToString()),
    };

    /// <summary>"12 min more", "8 min less", "no time".</summary>
    public static string Cost(Remedy remedy) => Math.Abs(remedy.Minutes) < 0.5
        ? "no time"
        : $"{Durations.Short(Math.Abs(remedy.Minutes) * 60)} {(remedy.Minutes > 0 ? "more" : "less")}";

    public static string Gives(Remedy remedy, Notation notation)
    {
        var moved = FigureWords.Moved(remedy.Gives, notation);
        return moved.Length == 0 ? "changes nothing else" : moved;
    }
}
