namespace BrewDeck.Deck.Keys;

/// <summary>Where a key is struck; the same key may ask for different things in different places.</summary>
[Flags]
public enum KeyContext
{
    None = 0,
    Deck = 1,
    List = 2,
    Choices = 4,
    Plan = 8,
    Text = 16,
    Batch = 32,
    Entry = 64,
    Choice = 128,

    /// <summary>Beside the deck while a rehearsal runs.</summary>
    Rehearsal = 256,

    /// <summary>Beside an entry that may be for another kind of reading.</summary>
    Kinds = 512,

    /// <summary>The inputs of a sum of the reckoner.</summary>
    Sum = 1024,

    /// <summary>A batch after pitching, beside the keys of a list.</summary>
    AfterDay = 2048,

    /// <summary>The page of a batch that is over.</summary>
    Closed = 4096,

    /// <summary>What the batches say about a brewhouse, beside the keys of a list.</summary>
    Lessons = 8192,

    /// <summary>A plan that cannot be brewed.</summary>
    Refused = 16384,

    /// <summary>A question of a set-up.</summary>
    SetUp = 32768,

    /// <summary>A recipe being made or changed.</summary>
    Recipe = 65536,

    /// <summary>A choice of recipes, beside the keys of a list.</summary>
    Recipes = 131072,

    /// <summary>A recipe on its way to another brewhouse.</summary>
    Scaling = 262144,

    /// <summary>The day drawn.</summary>
    Charts = 524288,

    /// <summary>The list of batches, beside the keys of a list.</summary>
    Batches = 1048576,

    /// <summary>Where a name is wanted: a letter begins to type it.</summary>
    Naming = 2097152,

    /// <summary>What an exercise asks, before its deck.</summary>
    Brief = 4194304,

    /// <summary>A water being made or changed.</summary>
    Water = 8388608,

    Screens = Brief | Water | Scaling | Batches | Charts | Recipe | Recipes | List | Choices | Plan | Refused | Text | Batch | Sum | AfterDay | Closed | Lessons,
    Scrolled = Brief | Charts | Plan | Refused | Text | Batch | Closed,
}
