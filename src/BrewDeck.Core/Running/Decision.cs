using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

/// <summary>What became of a command.</summary>
public abstract record Decision
{
    private Decision()
    {
    }

    /// <summary>These events happen: write them to disk, then fold them.</summary>
    public sealed record Accepted(ImmutableArray<RunEvent> Events) : Decision;

    /// <summary>It cannot be done now.</summary>
    /// <param name="Code">One of <see cref="DecisionCode"/>.</param>
    public sealed record Refused(string Code) : Decision;

    /// <summary>The reading lies outside what can be; ask again, with the bounds.</summary>
    public sealed record AskAgain(Reading Reading, double Low, double High) : Decision
    {
        /// <summary>Id of another vessel that shows just this; empty: none.</summary>
        public string Fits { get; init; } = "";

        /// <summary>A hydrometer in a sample as hot as the wort would show so much too little.</summary>
        public bool HotSample { get; init; }
    }

    /// <summary>Beer never gains extract by itself: higher than the last gravity in the fermenter; ask again.</summary>
    public sealed record Rises(double LastSg) : Decision;

    /// <summary>No yeast is so far on so soon after pitching; ask again.</summary>
    /// <param name="Attenuation">Apparent, as a fraction.</param>
    /// <param name="Hours">Since pitching.</param>
    public sealed record TooSoon(double Attenuation, double Hours) : Decision;

    /// <summary>More beer than the fermenter still holds; ask again.</summary>
    /// <param name="LeftL">What it holds.</param>
    public sealed record MoreThanThereIs(double LeftL) : Decision;

    /// <summary>The reading and one just taken of the same wort cannot both be right; ask again.</summary>
    /// <param name="ExtractKg">What they say together.</param>
    /// <param name="ExpectedKg">What was predicted for both.</param>
    /// <param name="MostKg">All that the day's grist and sugars have in them.</param>
    public sealed record Quarrel(Reading Reading, Reading Other, double ExtractKg, double ExpectedKg, double MostKg) : Decision;
}
