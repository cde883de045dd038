using BrewDeck.Logbook;

namespace BrewDeck.Rehearsals;

/// <summary>A logbook's disk in memory: a headless rehearsal runs through the journal without leaving a trace.</summary>
internal sealed class MemoryDisk : LogbookDisk
{
    private readonly Dictionary<string, MemoryStream> _files = new(StringComparer.Ordinal);

    public override string Path => "memory";

    public override Stream Open(string name)
    {
        if (!_files.TryGetValue(name, out var file))
            _files[name] = file = new MemoryStream();
        return new Handle(file);
    }

    public override byte[] ReadAll(string name) => _files.TryGetValue(name, out var file) ? file.ToArray() : [];

    public override IReadOnlyDictionary<string, long> Files() => _files.ToDictionary(f => f.Key, f => f.Value.Length);

    public override void Delete(string name) => _files.Remove(name);

    public override void Move(string from, string to)
    {
        _files[to] = _files[from];
        _files.Remove(from);
    }

    /// <summary>A place of its own in a shared file; closing it leaves the file.</summary>
    private sealed class Handle(MemoryStream file) : Stream
    {
        private long _position;

        public override bool CanRead => true;

        public override bool CanSeek => true;

        public override bool CanWrite => true;

        public override long Length => file.Length;

        public override long Position
        {
            get => _position;
            set => _position = value;
        }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            file.Position = _position;
            var read = file.Read(buffer, offset, count);
            _position += read;
            return read;
        }

        public override void Write(byte[] buffer, int offset, int count)
        {
            file.Position = _position;
            file.Write(buffer, offset, count);
            _position += count;
        }

        public override long Seek(long offset, SeekOrigin origin) => _position = origin switch
        {
            SeekOrigin.Begin => offset,
            SeekOrigin.Current => _position + offset,
            _ => file.Length + offset,
        };

        public override void SetLength(long value) => file.SetLength(value);
    }
}
