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
    private const double WhirlpoolC = 60;

    private readonly List<(Place Place, double? Minutes)> _steps = [];

    public BeerJsonBoil(Importing import, BeerJsonValues values, SourceNode recipe)
    {
        var boil = recipe["boil"];
        var told = boil is null ? null : values.In(boil, "boil_time", Dimension.Time, "min");
        foreach (var step in boil?.Items("boil_steps") ?? [])
            Add(values, step, import);
        Minutes = told ?? 60;
        if (told is null)
            import.Note(recipe, "tells no boil: 60 min are assumed");
    }

    public double Minutes { get; }

    /// <summary>Hot stand after the boil; null when no step tells it.</summary>
    public double? StandMin { get; private set; }

    public Place PlaceOf(int? step) => step is >= 1 && step <= _steps.Count ? _steps[step.Value - 1].Place : Place.Boil;

    public double? MinutesOf(int? step) => step is >= 1 && step <= _steps.Count ? _steps[step.Value - 1].Minutes : null;

    private void Add(BeerJsonValues values, SourceNode step, Importing import)
    {
        var start = values.In(step, "start_temperature", Dimension.Temperature, "°C");
        var end = values.In(step, "end_temperature", Dimension.Temperature, "°C") ?? start;
        var boils = (start ?? 100) >= BoilingC && (end ?? 100) >= BoilingC && !_steps.Exists(s => s.Place == Place.Boil);
        var boiled = _steps.Exists(s => s.Place != Place.Before);
        var place = boils ? Place.Boil : boiled ? Place.After : Place.Before;
        var minutes = values.In(step, "step_time", Dimension.Time, "min");
        step["name"]?.Take();
        if (place == Place.After && StandMin is null && (end ?? 0) >= WhirlpoolC)
            StandMin = minutes;
        else if (place != Place.Boil && minutes > 0)
            import.Note(step, $"{step.Shown}, {minutes} min from {start} to {end} °C: the plan draws its own {(place == Place.After ? "cooling" : "way to the boil")}");
        _steps.Add((place, minutes));
    }
}
