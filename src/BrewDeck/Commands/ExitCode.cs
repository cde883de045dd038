namespace BrewDeck.Commands;

/// <summary>Exit codes, part of the documented contract.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>Refused, or a check failed.</summary>
    public const int Refused = 1;

    public const int Usage = 2;

    public const int BadInput = 3;

    public const int LogbookTrouble = 4;

    /// <summary>A fault of the program itself.</summary>
    public const int Fault = 5;
}
