using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>The boil of a BeerJSON recipe: its length, the stand after it, and which numbered step is what.</summary>
internal sealed class BeerJsonBoil
{
    /// <summary>Where a step lies; hops timed to one go in there.</summary>
    internal enum Place
    {
        Before,
        Boil,
        After,
    }

    private const double BoilingC = 95;
    private const double HottestBoilC = 103;
    private const double WhirlpoolC = 60;

    /// <summary>Names of the steps that we write ourselves, by their place: nothing to carry over.</summary>
    public static readonly string[] OwnNames = ["run-in and heat-up", "boil", "hot stand"];

    private readonly List<(Place Place, double? Minutes)> _steps = [];

    public BeerJsonBoil(Importing import, BeerJsonValues values, SourceNode recipe)
    {
        var boil = recipe["boil"];
        var told = boil is null ? null : values.In(boil, "boil_time", RecipeSchema.Boil);
        Minutes = told ?? 60;
        foreach (var step in boil?.Items("boil_steps") ?? [])
            Add(values, step, import);
        if (told is null)
            import.Note(recipe, "gives no boil: 60 min is assumed");
    }

    public double Minutes { get; }

    /// <summary>Number of the step that is the hot stand; 0 when there is none.</summary>
    public int StandStep { get; private set; }

    /// <summary>Hot stand after the boil; null when no step tells it.</summary>
    public double? StandMin { get; private set; }

    public Place PlaceOf(int? step) => step is >= 1 && step <= _steps.Count ? _steps[step.Value - 1].Place : Place.Boil;

    public double? MinutesOf(int? step) => step is >= 1 && step <= _steps.Count ? _steps[step.Value - 1].Minutes : null;

    private void Add(BeerJsonValues values, SourceNode step, Importing import)
    {
        var start = values.In(step, "start_temperature", Dimension.Temperature, "°C");
        var end = values.In(step, "end_temperature", Dimension.Temperature, "°C");
        var minutes = values.In(step, "step_time", Dimension.Time, "min");
        var place = PlaceOf(start ?? 100, end ?? start ?? 100);
        _steps.Add((place, minutes));
        if (OwnNames.Contains(step["name"]?.Text))
            step["name"]!.Take();
        if (place == Place.Boil)
            Boil(step, minutes, Math.Max(start ?? 100, end ?? 100), import);
        else if (place == Place.After && StandStep == 0 && (end ?? start ?? 100) >= WhirlpoolC)
            Stand(step, minutes, (start, end), import);
        else if (minutes != 0)
            import.Note(step, $"{step.Shown}, {minutes} min from {start} to {end} °C: a plan draws its own");
    }

    private Place PlaceOf(double startC, double endC)
    {
        if (_steps.Exists(s => s.Place != Place.Before))
            return Place.After;
        return startC >= BoilingC && endC >= BoilingC ? Place.Boil : Place.Before;
    }

    private void Boil(SourceNode step, double? minutes, double hottestC, Importing import)
    {
        if (hottestC > HottestBoilC)
            import.Note(step, $"{step.Shown} at {hottestC} °C not carried over: wort boils at its boiling point");
        if (minutes is { } told && told != Minutes)
            import.Note(step, $"{step.Shown} of {told} min not carried over: boil_time says {Minutes} min");
    }

    private void Stand(SourceNode step, double? minutes, (double? Start, double? End) tempC, Importing import)
    {
        StandMin = minutes;
        StandStep = _steps.Count;
        if (tempC is not (null or (>= BoilingC and <= HottestBoilC), null))
            import.Note(step,
                $"{step.Shown} from {tempC.Start} to {tempC.End} °C: carried over as a stand that cools by itself");
    }
}
