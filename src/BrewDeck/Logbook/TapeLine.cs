using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>One event as kept: its place, its link of the hash chain and its text.</summary>
/// <param name="Seq">Place in the batch, from 0 without gaps.</param>
/// <param name="Body">The event as <see cref="EventCodec"/> wrote it.</param>
internal sealed record TapeLine(int Seq, byte[] Hash, byte[] Body)
{
    /// <summary>Format of the line; a higher one was written by a newer program.</summary>
    public const int Format = 1;

    private static readonly byte[] Prefix = Encoding.ASCII.GetBytes(FormattableString.Invariant($"{{\"format\":{Format},\"seq\":"));

    public static TapeLine After(TapeLine? before, byte[] body) =>
        new(before is null ? 0 : before.Seq + 1, HashChain.Link(before is null ? HashChain.Start : before.Hash, body), body);

    /// <summary>The next link of the chain: right place and right hash.</summary>
    public bool Follows(TapeLine? before) =>
        Seq == (before is null ? 0 : before.Seq + 1)
        && HashChain.Link(before is null ? HashChain.Start : before.Hash, Body).AsSpan().SequenceEqual(Hash);

    /// <exception cref="FormatException">Not an event that this version knows; the message names the line.</exception>
    public RunEvent ToEvent()
    {
        try
        {
            return EventCodec.Decode(Body);
        }
        catch (FormatException e)
        {
            throw new FormatException($"line {Seq + 1}: {e.Message}", e);
        }
    }

    /// <summary>The line with its line feed.</summary>
    public byte[] ToUtf8() =>
        [.. Head(Seq, Hash), .. Body, (byte)'}', (byte)'\n'];

    /// <summary>
    /// Reads a line without its line feed. It must be what <see cref="ToUtf8"/> writes to the byte, so that no damage hides in
    /// what JSON would forgive.
    /// </summary>
    /// <returns>Null when it is not a line of this format.</returns>
    public static TapeLine? Parse(ReadOnlySpan<byte> line)
    {
        if (!line.StartsWith(Prefix) || !Utf8Parser.TryParse(line[Prefix.Length..], out int seq, out var digits) || seq < 0)
            return null;
        var hashAt = Prefix.Length + digits + ",\"hash\":\"".Length;
        if (line.Length < hashAt + (2 * HashChain.Bytes))
            return null;
        var hash = new byte[HashChain.Bytes];
        if (Convert.FromHexString(line.Slice(hashAt, 2 * HashChain.Bytes), hash, out _, out _) != OperationStatus.Done)
            return null;
        var head = Head(seq, hash);
        return line.StartsWith(head) && line.Length > head.Length && line[^1] == '}'
            ? new TapeLine(seq, hash, line[head.Length..^1].ToArray())
            : null;
    }

    /// <summary>A line of a later format: whole, but not for this version to read.</summary>
    public static bool IsNewer(ReadOnlySpan<byte> line) =>
        line.StartsWith("{\"format\":"u8)
        && Utf8Parser.TryParse(line["{\"format\":".Length..], out int format, out _) && format > Format;

    private static byte[] Head(int seq, ReadOnlySpan<byte> hash) =>
    [
        .. Prefix,
        .. Encoding.ASCII.GetBytes(string.Create(
            CultureInfo.InvariantCulture, $"{seq},\"hash\":\"{Convert.ToHexStringLower(hash)}\",\"event\":")),
    ];
}
