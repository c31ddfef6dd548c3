namespace Gaugerod.Cli.Tests;

/// <summary>A disk with so many bytes of room left; what does not fit fails as the operating system lets it fail.</summary>
internal sealed class FullDisk(int room, Stream? to = null) : MemoryStream
{
    // ENOSPC, "no space left on device", as errno(3) lists it for Linux.
    private const int NoSpaceLeft = 28;
    private int _room = room;

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (buffer.Length > _room) throw new IOException("No space left on device", NoSpaceLeft);
        _room -= buffer.Length;
        to?.Write(buffer);
    }

    public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        Write(buffer.Span);
        return ValueTask.CompletedTask;
    }

    protected override void Dispose(bool disposing)
    {
        to?.Dispose();
        base.Dispose(disposing);
    }
}
