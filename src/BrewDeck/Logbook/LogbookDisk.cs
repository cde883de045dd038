namespace BrewDeck.Logbook;

/// <summary>The files of one logbook. The folder in earnest; a test stands in here to cut the power or to fill the disk.</summary>
internal abstract class LogbookDisk
{
    /// <summary>Where it is, for messages.</summary>
    public abstract string Path { get; }

    /// <summary>
    /// Opens a file to write, for this process alone, created when it is missing, readable by its owner only. Writes are not buffered,
    /// <see cref="Stream.Flush"/> returns once they are on the disk, and the file itself is there for good when this returns.
    /// </summary>
    public abstract Stream Open(string name);

    /// <returns>Whole content; empty when there is no such file.</returns>
    public abstract byte[] ReadAll(string name);

    /// <summary>Names and lengths of all files.</summary>
    public abstract IReadOnlyDictionary<string, long> Files();

    public abstract void Delete(string name);

    /// <summary>Gives a file another name, for good when this returns; a file of that name is replaced.</summary>
    public abstract void Move(string from, string to);

    /// <summary>Puts a whole file in place at once: after a power cut there is all of it, or what was there before.</summary>
    public void Put(string name, ReadOnlySpan<byte> content)
    {
        using (var fresh = Open(name + ".new"))
        {
            fresh.SetLength(0);
            fresh.Write(content);
            fresh.Flush();
        }

        Move(name + ".new", name);
    }

    /// <summary>Batches with a tape and the length of it.</summary>
    public IEnumerable<(int Batch, long Bytes)> Tapes() =>
        from file in Files()
        let batch = Tape.NumberOf(file.Key)
        where batch is not null
        orderby batch
        select (batch.Value, file.Value);
}
