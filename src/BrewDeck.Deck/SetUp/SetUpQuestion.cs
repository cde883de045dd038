using System.Collections.Immutable;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.SetUp;

/// <summary>Something that a set-up asks.</summary>
/// <param name="Id">Stable name, such as <c>kettle.diameter</c>.</param>
/// <param name="Sentence">One plain question.</param>
/// <param name="Help">How to find it out.</param>
/// <param name="Usual">The answer offered.</param>
internal abstract record SetUpQuestion(string Id, string Sentence, string Help, string Usual)
{
    /// <summary>Why a text cannot be the answer; null: it can.</summary>
    public abstract string? Fault(string text);

    /// <summary>One of a few words.</summary>
    internal sealed record Pick(string Id, string Sentence, string Help, ImmutableArray<PickOption> Options, string Usual)
        : SetUpQuestion(Id, Sentence, Help, Usual)
    {
        public override string? Fault(string text) => Options.Any(o => o.Word == text) ? null : "is none of the answers";
    }

    /// <param name="Spread">What is common practice; empty: nothing is.</param>
    /// <param name="Example">How to write it.</param>
    /// <param name="UsualIs">What is said beside the value offered.</param>
    /// <param name="Trial">How to measure it; null: by tape measure, or it is known.</param>
    internal sealed record Line(
        string Id, string Sentence, string Help, string Usual, string Spread, string Example, LineReader Read,
        SetUpTrial? Trial = null, string UsualIs = "common practice")
        : SetUpQuestion(Id, Sentence, Help, Usual)
    {
        public override string? Fault(string text) => Read(text, UnitSystem.Metric, out var fault) is null ? fault : null;
    }
}

/// <param name="Word">As kept.</param>
/// <param name="Says">As shown.</param>
internal sealed record PickOption(string Word, string Says);

/// <summary>What was typed as it is kept, in metric units; null when it cannot be taken, with the reason.</summary>
internal delegate string? LineReader(string text, UnitSystem units, out string fault);

/// <summary>A sum that finds out one answer or two with water.</summary>
/// <param name="Gives">The answers of its results; an answer that cannot be had is left out, and the text says why nothing can.</param>
internal sealed record SetUpTrial(Sum Sum, Func<double[], TrialResult> Gives);

internal sealed record TrialResult(ImmutableArray<(string Id, string Text)> Answers, string Trouble = "");
