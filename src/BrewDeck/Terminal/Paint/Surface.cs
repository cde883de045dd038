namespace BrewDeck.Terminal.Paint;

/// <summary>What a text lies on.</summary>
internal enum Surface
{
    Ground,

    /// <summary>A question in front of the screen.</summary>
    Panel,

    /// <summary>The ground under large digits: what is urgent there is red itself, not on red.</summary>
    Digits,

    /// <summary>The chosen row.</summary>
    Chosen,

    /// <summary>The line that is being typed.</summary>
    Field,
}
