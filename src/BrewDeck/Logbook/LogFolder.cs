using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>Where the logbook is: where <c>--logbook</c> says, or in the user's own data folder as the system has it.</summary>
internal static class LogFolder
{
    private const string Program = "brewdeck";

    /// <param name="option">What <c>--logbook</c> says; null when it was not given.</param>
    /// <returns>A full path; the folder may not exist yet.</returns>
    /// <exception cref="LogbookException">The home folder is not known or missing.</exception>
    public static string Resolve(string? option) =>
        Resolve(option, Environment.GetEnvironmentVariable, Directory.Exists, Kind());

    /// <summary>The same with the system as a parameter.</summary>
    public static string Resolve(string? option, Func<string, string?> variable, Func<string, bool> exists, DataFolders system)
    {
        if (option is not null)
            return option.Length > 0 ? Path.GetFullPath(option) : throw new LogbookException("--logbook: the path is empty; give a folder");
        return system switch
        {
            DataFolders.Windows => Path.Combine(Known("LOCALAPPDATA", variable, exists), Program),
            DataFolders.MacOs => Path.Combine(Known("HOME", variable, exists), "Library", "Application Support", Program),
            _ => Path.Combine(Xdg(variable) ?? Path.Combine(Known("HOME", variable, exists), ".local", "share"), Program),
        };
    }

    private static DataFolders Kind() =>
        OperatingSystem.IsWindows() ? DataFolders.Windows : OperatingSystem.IsMacOS() ? DataFolders.MacOs : DataFolders.Xdg;

    /// <summary>The XDG specification has a relative path ignored.</summary>
    private static string? Xdg(Func<string, string?> variable) =>
        variable("XDG_DATA_HOME") is { Length: > 0 } path && Path.IsPathRooted(path) ? path : null;

    private static string Known(string name, Func<string, string?> variable, Func<string, bool> exists) => variable(name) switch
    {
        null or "" => throw new LogbookException($"{name}: is not set, so there is no place for the logbook; set it, or give --logbook PATH"),
        { } path when !exists(path) => throw new LogbookException($"{path}: there is no such home folder; correct {name}, or give --logbook PATH"),
        { } path => path,
    };
}

/// <summary>How a system lays out a user's data.</summary>
internal enum DataFolders
{
    /// <summary>XDG base directories: Linux and its kin.</summary>
    Xdg,
    MacOs,
    Windows,
}
