using System.Collections.Immutable;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Something that a set-up asks.</summary>
/// <param name="Id">Stable name, such as <c>kettle.diameter</c>.</param>
/// <param name="Sentence">One plain question.</param>
/// <param name="Help">How to find it out.</param>
/// <param name="Usual">The answer offered.</param>
internal abstract record SetUpQuestion(string Id, Phrase Sentence, Phrase Help, string Usual)
{
    /// <summary>Whether a kept text can be the answer.</summary>
    public abstract bool Takes(string text);

    /// <summary>One of a few words.</summary>
    internal sealed record Pick(string Id, Phrase Sentence, Phrase Help, ImmutableArray<PickOption> Options, string Usual)
        : SetUpQuestion(Id, Sentence, Help, Usual)
    {
        public override bool Takes(string text) => Options.Any(o => o.Word == text);
    }

    /// <param name="Spread">What is common practice; empty: nothing is.</param>
    /// <param name="Example">How to write it.</param>
    /// <param name="UsualIs">What is said beside the value offered; null: that it is common practice.</param>
    /// <param name="Trial">How to measure it; null: by tape measure, or it is known.</param>
    internal sealed record Line(
        string Id, Phrase Sentence, Phrase Help, string Usual, Phrase Spread, string Example, LineReader Read,
        SetUpTrial? Trial = null, Phrase? UsualIs = null)
        : SetUpQuestion(Id, Sentence, Help, Usual)
    {
        public Phrase Usually => UsualIs ?? Typical.CommonPractice;

        public override bool Takes(string text) => Read(text, Notation.Metric, out _) is not null;
    }
}

/// <param name="Word">As kept.</param>
/// <param name="Says">As shown.</param>
internal sealed record PickOption(string Word, Phrase Says);

/// <summary>What was typed as it is kept, in metric units; null when it cannot be taken, with the reason.</summary>
internal delegate string? LineReader(string text, Notation notation, out string fault);

/// <summary>A sum that finds out one answer or two with water.</summary>
/// <param name="Gives">The answers of its results; an answer that cannot be had is left out, and the text says why nothing can.</param>
internal sealed record SetUpTrial(Sum Sum, Func<double[], TrialResult> Gives);

internal sealed record TrialResult(ImmutableArray<(string Id, string Text)> Answers, Phrase Trouble = default);
