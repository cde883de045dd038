using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Crash;

/// <summary>How much of what was written but not flushed a power cut leaves.</summary>
internal enum Cut
{
    /// <summary>All of it: only the process died.</summary>
    KeepsAll,

    /// <summary>Nothing of it.</summary>
    KeepsFlushed,

    /// <summary>Any sectors of it in any order, drawn from a seed.</summary>
    Tears,
}

/// <summary>
/// A disk in memory that remembers every write and flush, so that the power can be cut after each of them. A disk with a limit is
/// full beyond it.
/// </summary>
internal sealed class CuttableDisk(long limitBytes = long.MaxValue) : LogbookDisk
{
    private const int Sector = 512;
    private readonly Dictionary<string, MemoryStream> _files = new(StringComparer.Ordinal);
    private readonly List<Act> _acts = [];

    public override string Path => "disk";

    /// <summary>Writes, flushes and changes of the folder so far: the places where the power can be cut.</summary>
    public int Acts => _acts.Count;

    /// <summary>How often a file was read from end to end.</summary>
    public int ReadsOfAll { get; private set; }

    public long LimitBytes { get; set; } = limitBytes;

    public long UsedBytes => _files.Values.Sum(f => f.Length);

    public override Stream Open(string name)
    {
        if (!_files.ContainsKey(name))
            Do(new Act.Create(name));
        return new Handle(this, name);
    }

    public override byte[] ReadAll(string name)
    {
        ReadsOfAll++;
        return _files.TryGetValue(name, out var file) ? file.ToArray() : [];
    }

    public override IReadOnlyDictionary<string, long> Files() => _files.ToDictionary(f => f.Key, f => f.Value.Length);

    public override void Delete(string name) => Do(new Act.Delete(name));

    public override void Move(string from, string to) => Do(new Act.Move(from, to));

    /// <summary>For damage done from outside.</summary>
    public void Overwrite(string name, byte[] content)
    {
        Do(new Act.Create(name));
        Do(new Act.SetLength(name, 0));
        Do(new Act.Write(name, 0, content));
    }

    /// <summary>The same files, with a past of their own.</summary>
    public CuttableDisk Copy()
    {
        var copy = new CuttableDisk();
        foreach (var (name, file) in _files)
            copy.Overwrite(name, file.ToArray());
        return copy;
    }

    /// <summary>The disk as it is found after the power went before act number <paramref name="at"/>.</summary>
    public CuttableDisk After(int at, Cut cut, int seed = 0)
    {
        var found = new CuttableDisk();
        var random = new Random(seed);
        for (var i = 0; i < at; i++)
        {
            if (cut == Cut.KeepsAll || IsDown(i, at))
                found.Do(_acts[i]);
            else if (cut == Cut.Tears)
                found.DoSome(_acts[i], random);
        }

        return found;
    }

    /// <summary>Changes of the folder are waited for where they are made; a write is down once its file was flushed after it.</summary>
    private bool IsDown(int i, int at) => _acts[i] switch
    {
        Act.Write or Act.SetLength => _acts.FindIndex(i, at - i, a => a is Act.Flush && a.Name == _acts[i].Name) >= 0,
        _ => true,
    };

    private void DoSome(Act act, Random random)
    {
        if (act is not Act.Write write)
        {
            if (random.Next(2) == 0)
                Do(act);
            return;
        }

        for (var at = 0; at < write.Bytes.Length; at += Sector)
        {
            if (random.Next(2) == 0)
                Do(write with { At = write.At + at, Bytes = write.Bytes[at..Math.Min(at + Sector, write.Bytes.Length)] });
        }
    }

    private void Do(Act act)
    {
        act.Apply(_files);
        _acts.Add(act);
    }

    private void RequireRoom(long more)
    {
        if (UsedBytes + more > LimitBytes)
            throw new IOException("No space left on device", 28);
    }

    private abstract record Act(string Name)
    {
        public abstract void Apply(Dictionary<string, MemoryStream> files);

        public sealed record Create(string Name) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files) => files.TryAdd(Name, new MemoryStream());
        }

        public sealed record Delete(string Name) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files) => files.Remove(Name);
        }

        public sealed record Move(string Name, string To) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files)
            {
                files[To] = files[Name];
                files.Remove(Name);
            }
        }

        public sealed record Flush(string Name) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files)
            {
            }
        }

        public sealed record SetLength(string Name, long Length) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files) => files[Name].SetLength(Length);
        }

        public sealed record Write(string Name, long At, byte[] Bytes) : Act(Name)
        {
            public override void Apply(Dictionary<string, MemoryStream> files)
            {
                files[Name].Position = At;
                files[Name].Write(Bytes);
            }
        }
    }

    private sealed class Handle(CuttableDisk disk, string name) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => true;

        public override bool CanWrite => true;

        public override long Length => disk._files[name].Length;

        public override long Position { get; set; }

        public override void Flush() => disk.Do(new Act.Flush(name));

        public override void SetLength(long value)
        {
            disk.RequireRoom(value - Length);
            disk.Do(new Act.SetLength(name, value));
        }

        /// <summary>On a full disk the part that still fits is written, as a file system does.</summary>
        public override void Write(byte[] buffer, int offset, int count)
        {
            var fits = Math.Clamp(Length + disk.LimitBytes - disk.UsedBytes - Position, 0, count);
            disk.Do(new Act.Write(name, Position, buffer.AsSpan(offset, (int)fits).ToArray()));
            Position += fits;
            if (fits < count)
                throw new IOException("No space left on device", 28);
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            disk._files[name].Position = Position;
            var read = disk._files[name].Read(buffer, offset, count);
            Position += read;
            return read;
        }

        public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
        {
            SeekOrigin.Begin => offset,
            SeekOrigin.Current => Position + offset,
            _ => Length + offset,
        };
    }
}
