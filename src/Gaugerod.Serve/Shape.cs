namespace Gaugerod.Serve;

/// <summary>One shape in which a file can be sent.</summary>
/// <param name="Coding">How it is packed, as the Accept-Encoding header names it; empty for as it is.</param>
/// <param name="Tag">The strong entity tag of exactly these bytes.</param>
/// <param name="Bytes">What is sent.</param>
internal sealed record Shape(string Coding, string Tag, byte[] Bytes);
