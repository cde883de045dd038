using System.Security.Cryptography;

namespace BrewDeck.Logbook;

/// <summary>
/// Each event's hash covers its own bytes and the hash before it, so that an event that was altered, left out or put in between
/// shows. SHA-256 cut to 128 bits: still out of reach to forge, and half the line. The batch's number is not part of it, so that
/// a batch keeps its hashes when two logbooks are merged.
/// </summary>
internal static class HashChain
{
    public const int Bytes = 16;

    /// <summary>What stands before the first event.</summary>
    public static ReadOnlySpan<byte> Start => new byte[Bytes];

    public static byte[] Link(ReadOnlySpan<byte> before, ReadOnlySpan<byte> body)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(before);
        hash.AppendData(body);
        return hash.GetHashAndReset()[..Bytes];
    }
}
