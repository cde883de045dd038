using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>The words of the trade that the deck uses, each in one line for who brews the first time.</summary>
public static class TradeWords
{
    private static readonly ImmutableArray<(Phrase Word, Phrase Means)> Table =
    [
        ("grist", "the crushed malt and grain of a batch"),
        ("liquor", "brewing water, treated or not"),
        ("strike", "hot liquor for the mash, as warm as makes the mash right"),
        ("dough-in", "the grist stirred into the strike liquor"),
        ("rest", "the mash kept at one temperature, so that starch becomes sugar"),
        ("mash-out", "the last, hot rest: it ends the work of the enzymes and thins the wort"),
        ("lauter", "sweet wort drawn off through the bed of grain"),
        ("vorlauf", "the first cloudy wort, returned on top until it runs clear"),
        ("runnings", "what runs from the bed of grain"),
        ("sparge", "hot liquor run over the bed of grain to wash out the sugar left in it"),
        ("underlet", "liquor let in from under the bed of grain, to lift a stuck one"),
        ("hot break", "flakes and foam as the boil begins: it boils over then"),
        ("knock-out", "the end of the boil: heat off"),
        ("whirlpool", "the wort turned round, so that what is solid gathers in the middle"),
        ("trub", "what settles there: hops and flakes that stay in the kettle"),
        ("cast-out", "the wort through the chiller into the fermenter"),
        ("pitch", "yeast put into the cooled wort"),
    ];

    public static ImmutableArray<Line> Lines(Notation notation) =>
    [
        Line.Of(""),
        Line.Of(notation.Text("Words of the trade"), Tone.Strong),
        .. Table.Select(w => new Line([new Span($"  {notation.Text(w.Word),-11}", Tone.Strong), new Span(notation.Text(w.Means))])),
    ];
}
