namespace BrewDeck;

internal static class Program
{
    private static int Main(string[] args) => args.Length;
}
